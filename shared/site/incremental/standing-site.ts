import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import type { PrivateWords } from "../../records/checks/private-words.ts";
import { digest } from "../digest.ts";
import { fileOf } from "../files/site-file.ts";
import { takenAway } from "../folders/build-folders.ts";
import type { CutLog } from "../groups/cut-log.ts";
import { type SpareRecord, stampOfFiles, stampOfFolders } from "./spare-site.ts";

/** What is kept of the items of one variant. */
export interface VariantRecord {
  /** Of everything that their files were made from; null where more may be in them. */
  readonly key: string | null;
  readonly addresses: readonly string[];
}

/** What is kept of a group of families beside its files: enough for the pages of the whole. */
export interface GroupRecord {
  /** Of everything that its files were made from. */
  readonly key: string;
  readonly listed: readonly ListedFamily[];
  readonly warnings: readonly string[];
  /** Names that its items keep private. */
  readonly names: readonly PrivateWords[];
  /** Of its files, pages and others. */
  readonly addresses: readonly string[];
  /** Of photographs and recordings, which another group may show, too. */
  readonly copies: readonly string[];
  readonly variants: readonly VariantRecord[];
}

export interface SiteRecord {
  /** The folder of the build that stands: another one is not what this is the record of. */
  readonly folder: string;
  /** Of everything that the site was made from. */
  readonly key: string;
  readonly items: number;
  readonly pages: number;
  readonly warnings: number;
  /** Of every file. */
  readonly addresses: readonly string[];
  /** By address, of everything that a page of the whole was made from. */
  readonly pageKeys: Readonly<Record<string, string>>;
  /** Of every group, in no order: what is kept of a group under another key belongs to a build that failed. */
  readonly groupKeys: readonly string[];
  /** Of its folders, as they were left. */
  readonly stamp: string;
  /** Of its files, as they were left. */
  readonly fileStamp: string;
  /** Null where there is none. */
  readonly spare: SpareRecord | null;
}

const record = "site.json";
const logs = "logs.json";

/** What stood a moment ago is gone: somebody else has built meanwhile. */
export class LostSite extends Error {}

/**
 * What is known of the site that stands at an out path, for the next build to rely on. It lies in the cache, may be
 * deleted at any time, and is believed only of the very folder for which it was written, and only while that is as it
 * was left.
 */
export class StandingSite {
  readonly #folder: string;
  readonly out: string;
  /** The folder of the build that stands; undefined where there is none to go by. */
  readonly site: string | undefined;
  #record: SiteRecord | null;
  #inSpare: ReadonlySet<string> | undefined;

  /** `standing` is the folder of the build that stands at `out`; undefined where there is none. */
  constructor(cacheFolder: string, out: string, standing: string | undefined) {
    this.#folder = path.join(cacheFolder, "standing", digest(out));
    this.out = out;
    this.site = standing;
    const known = read<SiteRecord>(path.join(this.#folder, record));
    this.#record = known && standing !== undefined && known.folder === standing ? known : null;
  }

  get record(): SiteRecord | null {
    return this.#record;
  }

  /** Nothing is known of a site that somebody has been at since, or that a disk has lost something of. */
  forgetUnlessAsLeft(): void {
    if (!this.#record || this.site === undefined) return;
    const { fileStamp, addresses } = this.#record;
    if (fileStamp !== stampOfFiles(this.site, addresses)) this.#record = null;
  }

  group(families: readonly string[], key: string): GroupRecord | null {
    const last = this.record?.groupKeys.includes(key) ? this.lastGroup(families) : null;
    return last?.key === key ? last : null;
  }

  /** What is kept of a group as it stands, whatever it was made from. */
  lastGroup(families: readonly string[]): GroupRecord | null {
    if (!this.record) return null;
    const kept = read<GroupRecord>(this.#fileOf(families));
    return kept && this.record.groupKeys.includes(kept.key) ? kept : null;
  }

  /** Where a file of the standing site lies; null where it does not. */
  fileOf(address: string): string | null {
    if (!this.record || this.site === undefined) return null;
    const file = path.join(this.site, fileOf(address));
    return existsSync(file) ? file : null;
  }

  /** The addresses of which the spare has the very files that the standing site has. */
  get inSpare(): ReadonlySet<string> {
    if (this.#inSpare) return this.#inSpare;
    const inSpare = new Set(this.record?.spare ? this.record.addresses : []);
    for (const address of this.record?.spare?.lacking ?? []) inSpare.delete(address);
    this.#inSpare = inSpare;
    return inSpare;
  }

  /** Of every file of the spare. */
  get spareAddresses(): string[] {
    return [...this.inSpare, ...(this.record?.spare?.others ?? [])];
  }

  /** Whether a folder is the spare, and as the last build left it. */
  isSpare(folder: string): boolean {
    return this.record?.spare?.stamp === stampOfFolders(folder, this.spareAddresses);
  }

  /** `bytes`: a kept group as JSON. */
  keepGroup(families: readonly string[], bytes: Uint8Array): void {
    write(this.#fileOf(families), bytes);
  }

  /** As they were cut; they name what they were made from. */
  get logs(): Readonly<Record<string, CutLog>> {
    return read(path.join(this.#folder, logs)) ?? {};
  }

  keepLogs(cuts: Readonly<Record<string, CutLog>>): void {
    write(path.join(this.#folder, logs), JSON.stringify(cuts));
  }

  /** Last of all; what is kept of groups that are there no longer goes. */
  keep(site: SiteRecord, groups: readonly (readonly string[])[]): void {
    write(path.join(this.#folder, record), JSON.stringify(site));
    const wanted = new Set([
      record,
      logs,
      ...groups.map((families) => path.basename(this.#fileOf(families))),
    ]);
    for (const name of namesIn(this.#folder)) if (!wanted.has(name)) takenAway(path.join(this.#folder, name));
    this.#sweep();
  }

  /** Records of sites that stand no longer, at whatever out path. */
  #sweep(): void {
    const all = path.dirname(this.#folder);
    for (const name of namesIn(all)) {
      const site = read<SiteRecord>(path.join(all, name, record));
      if (site && !existsSync(site.folder)) takenAway(path.join(all, name));
    }
  }

  #fileOf(families: readonly string[]): string {
    return path.join(this.#folder, `${digest(families.join(" "))}.json`);
  }
}

/** Null where it is not there, or is not what it should be: then it is made anew. */
function read<Kept>(file: string): Kept | null {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as Kept;
  } catch {
    return null;
  }
}

const namesIn = (folder: string): string[] => (existsSync(folder) ? readdirSync(folder) : []);

/** A cache that cannot be written costs the next build time, and nothing else. */
function write(file: string, content: string | Uint8Array): void {
  const part = `${file}.${process.pid}`;
  try {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(part, content);
    renameSync(part, file);
  } catch {
    rmSync(part, { force: true });
  }
}
