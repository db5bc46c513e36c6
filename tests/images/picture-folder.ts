import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { onTestFinished } from "vitest";
import { type RenderedImages, renderImages } from "../../shared/images/render-images.ts";

/** A collection's folder with a cache and a site of its own, gone when the test is over. */
export interface PictureFolder {
  readonly root: string;
  readonly cacheFolder: string;
  readonly outFolder: string;
  /** Writes a file below the root. */
  put(file: string, bytes: Buffer | string): Promise<string>;
  render(...originals: string[]): Promise<RenderedImages>;
  /** The bytes behind a public address. */
  fetch(address: string): Promise<Buffer>;
  /** Every file below the site and the cache, by its path. */
  everything(): Promise<Map<string, Buffer>>;
}

export async function pictureFolder(): Promise<PictureFolder> {
  const folder = await mkdtemp(path.join(tmpdir(), "pictures-"));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const root = path.join(folder, "root");
  const cacheFolder = path.join(folder, "cache");
  const outFolder = path.join(folder, "site");
  await mkdir(root);
  return {
    root,
    cacheFolder,
    outFolder,
    async put(file, bytes) {
      const full = path.join(root, file);
      await mkdir(path.dirname(full), { recursive: true });
      await writeFile(full, bytes);
      return full;
    },
    render: (...originals) => renderImages({ root, originals, cacheFolder, outFolder }),
    fetch: (address) => readFile(path.join(outFolder, address)),
    async everything() {
      const files = new Map<string, Buffer>();
      for (const below of [outFolder, cacheFolder]) {
        for (const entry of await readdir(below, { recursive: true, withFileTypes: true })) {
          const full = path.join(entry.parentPath, entry.name);
          if (entry.isFile()) files.set(path.relative(folder, full), await readFile(full));
        }
      }
      return files;
    },
  };
}
