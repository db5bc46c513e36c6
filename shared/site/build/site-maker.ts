import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import type { Audience } from "../../publication/published.ts";
import type { CollectionTexts } from "../../source/read-texts.ts";
import { deadLinks } from "../checks/dead-links.ts";
import { findPrivateNames } from "../checks/private-names.ts";
import { digest } from "../digest.ts";
import type { SiteFile } from "../files/site-file.ts";
import { type SiteFrame, siteFrame } from "../files/site-frame.ts";
import { type WholeSite, wholeSite } from "../files/whole-site.ts";
import type { SiteFolder } from "../folders/out-folder.ts";
import type { GroupedCollection } from "../groups/family-groups.ts";
import { SiteWriter, type Writing } from "../incremental/site-writer.ts";
import type { GroupRecord, SiteRecord, StandingSite } from "../incremental/standing-site.ts";
import type { OnProgress } from "../progress.ts";
import { makeGroups } from "./make-groups.ts";

export interface BuildTask {
  readonly root: string;
  readonly audience: Audience;
  /** Of the tool and what belongs to it. */
  readonly tool: string;
  readonly texts: CollectionTexts;
  readonly onProgress: OnProgress | undefined;
}

interface Built {
  readonly record: Omit<SiteRecord, "key" | "folder" | "stamp" | "fileStamp" | "spare">;
  readonly groups: readonly (readonly string[])[];
}

/** One build into one folder: group after group, then the whole. Holds of each group what the whole is made from. */
export class SiteMaker {
  readonly #task: BuildTask;
  readonly #standing: StandingSite;
  readonly #into: SiteFolder;
  readonly #writer: SiteWriter;
  /** Photographs and recordings that cannot be shown. */
  readonly refused: Diagnostic[] = [];

  constructor(task: BuildTask, standing: StandingSite, into: SiteFolder) {
    this.#task = task;
    this.#standing = standing;
    this.#into = into;
    this.#writer = new SiteWriter(into, standing);
  }

  get writing(): Writing {
    return this.#writer.writing;
  }

  /** Null where the content has errors. */
  async run(grouped: GroupedCollection): Promise<Built | null> {
    const { root, audience, texts } = this.#task;
    const frame = await siteFrame(root, audience, texts, grouped);
    if (!frame) return null;
    this.refused.push(...frame.refused);
    if (this.refused.length > 0) return null;
    const { made, quoted, refused } = await makeGroups(
      this.#task,
      grouped,
      frame,
      this.#standing,
      this.#into,
    );
    this.refused.push(...refused);
    if (!made) return null;
    const kept = made.map((group) => group.kept());
    for (const [at, group] of kept.entries()) {
      const writing = made[at]?.writing;
      if (writing) this.#writer.adoptGroup(group, writing);
      else this.#writer.keepGroup(group);
    }
    const whole = wholeSite(
      frame,
      inOrder(grouped, kept),
      quoted,
      kept.flatMap(({ addresses }) => addresses),
    );
    if (whole.diagnostics.some(isError)) return null;
    const pageKeys = await this.#writeWhole(whole);
    if (this.#into.isUsed) this.#writer.sweep(this.#standing.spareAddresses);
    const ofGroups = new Set(kept.flatMap((group) => group.warnings)).size;
    const ofTexts = [
      ...deadLinks(texts.texts),
      ...findPrivateNames(
        kept.flatMap(({ names }) => names),
        texts.texts,
      ),
    ];
    const warnings = frame.diagnostics.length + whole.diagnostics.length + ofGroups + ofTexts.length;
    const { addresses } = this.#writer;
    return {
      record: {
        items: grouped.itemCount,
        pages: addresses.filter((address) => address.endsWith("/") || address === "/404.html").length,
        warnings,
        addresses,
        pageKeys,
        groupKeys: kept.map(({ key }) => key),
      },
      groups: grouped.groups.map(({ families }) => families),
    };
  }

  /** What shows the whole goes through Eleventy; returns what each of its pages was made from. */
  async #writeWhole({ pages, searchFiles, otherFiles, siteOf }: WholeSite): Promise<Record<string, string>> {
    const keys: Record<string, string> = {};
    const changed: { file: SiteFile; site: SiteFrame["site"] }[] = [];
    const known = this.#standing.record?.pageKeys ?? {};
    for (const { address, make } of pages) {
      const page = make();
      const site = siteOf(page);
      const key = digest(
        this.#task.tool,
        JSON.stringify([page, site.settings, site.assets, site.logo, site.hasArticles]),
      );
      keys[address] = key;
      if (Object.hasOwn(known, address) && known[address] === key) this.#writer.keep(address);
      else changed.push({ file: { kind: "page", address, make: () => page }, site });
    }
    for (const file of [...otherFiles(), ...searchFiles]) this.#writer.write(file);
    if (changed.length > 0) {
      for (const { file } of changed) this.#writer.clear(file.address);
      const { runEleventy } = await import("../eleventy/run-eleventy.ts");
      const parts = changed.map(({ file, site }) => ({ files: [file], site }));
      await runEleventy(this.#into.folder, parts);
      for (const { file } of changed) this.#writer.adopt(file.address);
    }
    return keys;
  }
}

/** In the order of the collection, which groups of several families may break. */
function inOrder({ groups }: GroupedCollection, kept: readonly GroupRecord[]): ListedFamily[] {
  const families = groups.flatMap(({ families: of }) => of).sort((a, b) => (a < b ? -1 : 1));
  const listed = new Map(kept.flatMap((group) => group.listed.map((family) => [family.id, family])));
  return families.flatMap((id) => listed.get(id) ?? []);
}
