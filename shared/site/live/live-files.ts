import type { Site } from "../../../templates/render-page.ts";
import type { PageMaker } from "../../pages/page-maker.ts";
import type { Page } from "../../pages/site-pages.ts";
import { contentOf } from "../files/file-content.ts";
import type { SiteFile } from "../files/site-file.ts";

/** What an address of the site answers with: its content, or the file that it is a copy of. */
export type LiveAnswer =
  | { readonly kind: "content"; readonly content: string | Uint8Array }
  | { readonly kind: "copy"; readonly from: string };

/** Files of the site that are held in memory, each rendered when it is first asked for. */
export class LiveFiles {
  readonly #makers = new Map<string, () => LiveAnswer>();
  readonly #answers = new Map<string, LiveAnswer>();

  add(file: SiteFile, site: Site): void {
    this.#makers.set(file.address, () =>
      file.kind === "copy"
        ? { kind: "copy", from: file.from }
        : { kind: "content", content: contentOf(file, site) },
    );
  }

  /** A page that has to be there before it is known what is around it. */
  addPage({ address, make }: PageMaker, siteOf: (page: Page) => Site): void {
    this.#makers.set(address, () => {
      const page = make();
      const file: SiteFile = { kind: "page", address, make: () => page };
      return { kind: "content", content: contentOf(file, siteOf(page)) };
    });
  }

  get addresses(): string[] {
    return [...this.#makers.keys()];
  }

  has(address: string): boolean {
    return this.#makers.has(address);
  }

  answer(address: string): LiveAnswer | undefined {
    const known = this.#answers.get(address);
    if (known) return known;
    const answer = this.#makers.get(address)?.();
    if (answer) this.#answers.set(address, answer);
    return answer;
  }
}
