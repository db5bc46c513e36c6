import { statSync } from "node:fs";
import path from "node:path";
import { digest } from "../digest.ts";
import { fileOf } from "../files/site-file.ts";

/** What is known of the spare: which of its files are those of the site that stands. */
export interface SpareRecord {
  /** Of its folders, as the build that filled them left them. */
  readonly stamp: string;
  /** Of files of the site that stands, those that it has otherwise, or not at all. */
  readonly lacking: readonly string[];
  /** Of its own files, those that the site that stands has otherwise, or not at all. */
  readonly others: readonly string[];
}

/** What is known of the folder that the next site will be made in: the twin, or the last site; null where there is neither. */
export function spareRecord(
  twin: string | null,
  last: { readonly stamp: string; readonly addresses: readonly string[] } | null,
  addresses: readonly string[],
  lacking: readonly string[],
): SpareRecord | null {
  const otherwise = new Set(lacking);
  if (twin !== null) {
    const linked = addresses.filter((address) => !otherwise.has(address));
    return { stamp: stampOfFolders(twin, linked), lacking, others: [] };
  }
  if (!last) return null;
  const there = new Set(addresses);
  const others = last.addresses.filter((address) => !there.has(address) || otherwise.has(address));
  return { stamp: last.stamp, lacking, others };
}

/**
 * A stamp of files, which changes as soon as one of them is not what was written: a disk that lost power, or
 * somebody's hand, may have cut it short. A link keeps all that the stamp is made of.
 */
export const stampOfFiles = (site: string, addresses: readonly string[]): string =>
  digest(
    addresses
      .map((address) => {
        const stat = statSync(`${site}${path.sep}${fileOf(address)}`, { throwIfNoEntry: false });
        return stat ? `${stat.ino} ${stat.size} ${stat.mtimeMs}` : address;
      })
      .join("\n"),
  );

/**
 * A stamp of the folders that files lie in, which changes as soon as somebody adds a file, removes one or puts one in
 * the place of another, since the disk notes when a folder was changed.
 */
export function stampOfFolders(site: string, addresses: Iterable<string>): string {
  const folders = new Set(["."]);
  for (const address of addresses) {
    for (let at = path.posix.dirname(fileOf(address)); !folders.has(at); at = path.posix.dirname(at)) {
      folders.add(at);
    }
  }
  const stamps = [...folders].sort().map((folder) => {
    const stat = statSync(path.join(site, folder), { throwIfNoEntry: false });
    return stat ? `${folder} ${stat.ino} ${stat.mtimeMs}` : folder;
  });
  return digest(stamps.join("\n"));
}
