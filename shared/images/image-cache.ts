import { hash, randomUUID } from "node:crypto";
import { copyFile, link, mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { askedFor, isOlderThanADay, isUnasked } from "./asked-for.ts";
import { entryNames, type PublishedPicture } from "./assemble-set.ts";
import type { Size } from "./plan-image.ts";

/**
 * A folder for each picture, named by its hash: its files, and last of all a record of what they should be.
 * Whatever does not agree with its record is as good as not there, so that a build that was killed, a full disk
 * or a careless hand costs time and nothing else.
 */
export interface ImageCache {
  /** The picture, where all of its files are there and whole. */
  find(hash: string): Promise<PublishedPicture | null>;
  /** Keeps one file; returns its digest for the record. */
  keepFile(hash: string, name: string, bytes: Buffer): Promise<string>;
  keepRecord(picture: PublishedPicture, digests: ReadonlyMap<string, string>): Promise<void>;
  /** Puts a file of the cache in its place on the site, in one step. */
  place(hash: string, name: string, target: string): Promise<void>;
}

interface EntryRecord {
  readonly colour: string;
  readonly sizes: readonly [Size, ...Size[]];
  readonly digests: Readonly<Record<string, string>>;
}

const recordName = "record.json";
const entryName = /^[0-9a-f]{24}$/;
const partName = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

const digestOf = (bytes: Buffer) => hash("sha256", bytes);

export async function openImageCache(folder: string): Promise<ImageCache> {
  const parts = path.join(folder, "parts");
  await mkdir(parts, { recursive: true });
  await removeOldParts(parts);
  await removeOldEntries(folder);
  const entryOf = (hash: string) => path.join(folder, hash);

  /** Under another name first: a file that has its name is whole, unless the disk lies. */
  const write = async (hash: string, name: string, bytes: Buffer | string) => {
    const part = path.join(parts, randomUUID());
    try {
      await mkdir(entryOf(hash), { recursive: true });
      await writeFile(part, bytes);
      await rename(part, path.join(entryOf(hash), name));
    } catch (problem) {
      await rm(part, { force: true });
      throw problem;
    }
  };

  return {
    async find(hash) {
      try {
        const record: unknown = JSON.parse(await readFile(path.join(entryOf(hash), recordName), "utf8"));
        if (!isEntryRecord(record)) return null;
        for (const name of entryNames(record.sizes)) {
          const bytes = await readFile(path.join(entryOf(hash), name));
          if (digestOf(bytes) !== record.digests[name]) return null;
        }
        await askedFor(path.join(entryOf(hash), recordName));
        return { hash, colour: record.colour, sizes: record.sizes };
      } catch {
        return null;
      }
    },
    async keepFile(hash, name, bytes) {
      await write(hash, name, bytes);
      return digestOf(bytes);
    },
    async keepRecord({ hash, colour, sizes }, digests) {
      const record: EntryRecord = { colour, sizes, digests: Object.fromEntries(digests) };
      await write(hash, recordName, JSON.stringify(record));
    },
    async place(hash, name, target) {
      const source = path.join(entryOf(hash), name);
      const part = `${target}.${randomUUID()}`;
      // Another disk, or one without links.
      await link(source, part).catch(() => copyFile(source, part));
      await rename(part, target);
      // Where both were the same file already, a rename does nothing.
      await rm(part, { force: true });
      await askedFor(target);
    },
  };
}

async function removeOldParts(parts: string): Promise<void> {
  for (const name of await readdir(parts)) {
    if (!partName.test(name)) continue;
    const part = path.join(parts, name);
    if (await isOlderThanADay(part)) await rm(part, { force: true });
  }
}

async function removeOldEntries(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    if (!entryName.test(name)) continue;
    if (await isUnasked(path.join(folder, name, recordName)))
      await rm(path.join(folder, name), { recursive: true, force: true });
  }
}

function isEntryRecord(value: unknown): value is EntryRecord {
  if (typeof value !== "object" || value === null) return false;
  if (!("colour" in value && "sizes" in value && "digests" in value)) return false;
  const { colour, sizes, digests } = value;
  const isColour = typeof colour === "string" && /^#[0-9a-f]{6}$/.test(colour);
  const areSizes = Array.isArray(sizes) && sizes.length > 0 && sizes.every(isSize);
  return isColour && areSizes && typeof digests === "object" && digests !== null;
}

function isSize(value: unknown): value is Size {
  return (
    typeof value === "object" &&
    value !== null &&
    "width" in value &&
    "height" in value &&
    Number.isInteger(value.width) &&
    Number.isInteger(value.height)
  );
}
