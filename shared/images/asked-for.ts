import { readdir, rm, stat, utimes } from "node:fs/promises";
import path from "node:path";

const aDay = 24 * 60 * 60 * 1000;
/** What no build has asked for in this long goes. */
const aSeason = 90 * aDay;

/** A file in a cache says by its time when it was last asked for; where it cannot be written, it is read all the same. */
export async function askedFor(file: string): Promise<void> {
  const now = new Date();
  await utimes(file, now, now).catch(() => {});
}

/** False of what is not there. */
export const isOlderThanADay = (file: string): Promise<boolean> => isOlder(file, aDay);
export const isUnasked = (file: string): Promise<boolean> => isOlder(file, aSeason);

async function isOlder(file: string, age: number): Promise<boolean> {
  const found = await stat(file).catch(() => null);
  return found !== null && Date.now() - found.mtimeMs > age;
}

/** Names that are of our making begin with a hash, or have one. */
const ofContent = /(?:^|\.)[0-9a-f]{10,24}(?:[-.]|$)/;

/** Takes the files of a folder away that no build has asked for in a season. */
export async function removeUnasked(folder: string): Promise<void> {
  for (const name of await readdir(folder).catch(() => [])) {
    const file = path.join(folder, name);
    if (ofContent.test(name) && (await isUnasked(file))) await rm(file, { force: true });
  }
}
