import {
  copyFileSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import type { Site } from "../../../templates/render-page.ts";
import { contentOf, encoded } from "../files/file-content.ts";
import { fileOf, type SiteFile } from "../files/site-file.ts";
import type { SiteFolder } from "../folders/out-folder.ts";
import { type GroupRecord, LostSite, type StandingSite } from "./standing-site.ts";

/** What came of writing. Plain data, which a thread hands over. */
export interface Writing {
  /** How many files were written, and how many stood as they should. */
  readonly written: number;
  readonly unchanged: number;
  /** The addresses of files that the folder for the next site will not have. */
  readonly lacking: readonly string[];
}

/**
 * The way around Eleventy. The pages and data of items, of which there are thousands, are rendered by the same
 * function, written and released; Eleventy would hold all of them until the end. A file that stands as it should is
 * not written again but linked.
 */
export class SiteWriter {
  readonly #into: SiteFolder;
  readonly #standing: StandingSite | null;
  readonly #folders = new Set<string>();
  readonly #addresses = new Set<string>();
  readonly #lacking: string[] = [];
  #written = 0;
  #unchanged = 0;

  constructor(into: SiteFolder, standing: StandingSite | null = null) {
    this.#into = into;
    this.#standing = standing;
  }

  get writing(): Writing {
    return { written: this.#written, unchanged: this.#unchanged, lacking: this.#lacking };
  }

  /** `site` is asked for by pages only. */
  write(file: SiteFile, site?: Site): void {
    // Two items may show one photograph.
    if (file.kind === "copy" && this.#addresses.has(file.address)) return;
    this.#claim(file.address);
    if (file.kind === "copy") {
      const { from } = file;
      this.#put(
        file.address,
        () => readFileSync(from),
        (to) => copyFileSync(from, to),
      );
      return;
    }
    const content = contentOf(file, site);
    const bytes = typeof content === "string" ? encoded(content) : content;
    this.#put(
      file.address,
      () => bytes,
      (to) => writeFileSync(to, bytes),
    );
  }

  /** A group that stands as it should. Two groups may show one photograph. */
  keepGroup({ addresses, copies }: GroupRecord): void {
    for (const address of addresses) this.keep(address);
    for (const address of copies) if (!this.#addresses.has(address)) this.keep(address);
  }

  /** Takes a group into account that a writer of its own has written. */
  adoptGroup({ addresses, copies }: GroupRecord, { written, unchanged, lacking }: Writing): void {
    for (const address of addresses) this.#claim(address);
    for (const address of copies) this.#addresses.add(address);
    for (const address of lacking) this.#lacking.push(address);
    this.#written += written;
    this.#unchanged += unchanged;
  }

  /** What stands stays. Throws where it does not stand. */
  keep(address: string): void {
    this.#claim(address);
    this.#stay(address);
  }

  /** Makes way for a file that somebody else is to write, and says where. */
  clear(address: string): string {
    const { folder, isUsed } = this.#into;
    const to = path.join(folder, fileOf(address));
    this.#open(path.dirname(to));
    // What lies there may be linked into a site that stands: it is taken away, and never written into.
    if (isUsed) rmSync(to, { force: true });
    return to;
  }

  /** Takes a file into account that somebody else has written to its place. */
  adopt(address: string): void {
    this.#claim(address);
    const to = path.join(this.#into.folder, fileOf(address));
    const before = this.#standing?.fileOf(address);
    if (before && readFileSync(before).equals(readFileSync(to))) {
      rmSync(to);
      this.#link(address);
    } else this.#wrote(address, to);
  }

  /** Takes away what an earlier site had in the folder, and this one has not. */
  sweep(earlier: Iterable<string>): void {
    const { folder } = this.#into;
    // A page and one that leads on from where it was have two addresses, and one file.
    const wanted = new Set([...this.#addresses].map(fileOf));
    for (const address of earlier) {
      if (wanted.has(fileOf(address))) continue;
      const file = path.join(folder, fileOf(address));
      rmSync(file, { force: true });
      for (let at = path.dirname(file); at !== folder && isEmpty(at); at = path.dirname(at)) rmdirSync(at);
    }
  }

  get addresses(): readonly string[] {
    return [...this.#addresses];
  }

  #put(address: string, bytes: () => Uint8Array, write: (to: string) => void): void {
    const before = this.#standing?.fileOf(address);
    if (before && readFileSync(before).equals(bytes())) {
      this.#stay(address);
      return;
    }
    const to = this.clear(address);
    write(to);
    this.#wrote(address, to);
  }

  #stay(address: string): void {
    if (this.#into.isUsed && this.#standing?.inSpare.has(address)) this.#unchanged++;
    else this.#link(address);
  }

  #link(address: string): void {
    const before = this.#standing?.fileOf(address);
    if (!before) throw new LostSite(address);
    const to = this.clear(address);
    try {
      linkSync(before, to);
    } catch {
      if (!existsSync(before)) throw new LostSite(address);
      // Another disk, or one without links; or it is a photograph, which another group has put there.
      if (!existsSync(to)) {
        copyFileSync(before, to);
        this.#lacking.push(address);
      }
    }
    this.#unchanged++;
  }

  #open(folder: string): void {
    if (this.#folders.has(folder)) return;
    mkdirSync(folder, { recursive: true });
    this.#folders.add(folder);
  }

  #wrote(address: string, to: string): void {
    this.#written++;
    if (!this.#linkedToTwin(address, to)) this.#lacking.push(address);
  }

  #linkedToTwin(address: string, to: string): boolean {
    const { twin } = this.#into;
    if (twin === null) return false;
    const inTwin = path.join(twin, fileOf(address));
    try {
      this.#open(path.dirname(inTwin));
      linkSync(to, inTwin);
      return true;
    } catch {
      return existsSync(inTwin);
    }
  }

  /** No two files have one address, whoever writes them. */
  #claim(address: string): void {
    if (this.#addresses.has(address))
      throw new Error(`Two files of the site claim the address "${address}".`);
    this.#addresses.add(address);
  }
}

const isEmpty = (folder: string): boolean => existsSync(folder) && readdirSync(folder).length === 0;
