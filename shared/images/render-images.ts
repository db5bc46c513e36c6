import { createHash } from "node:crypto";
import { mkdir } from "node:fs/promises";
import { availableParallelism } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { assembleSet, entryNames, type PublishedPicture, publishedName } from "./assemble-set.ts";
import { encodePicture } from "./encode-picture.ts";
import { openImageCache } from "./image-cache.ts";
import type { ImageSet, Images } from "./image-set.ts";
import { readOriginal } from "./original-bytes.ts";
import { settingsKey } from "./plan-image.ts";
import { RefusedFile } from "./refused-file.ts";
import { slots } from "./slots.ts";

interface ImageTask {
  readonly root: string;
  /** Paths relative to the root, with forward slashes. */
  readonly originals: readonly string[];
  /** Shared by public and private builds; may be deleted at any time. */
  readonly cacheFolder: string;
  /** The root of the site that is being written; the pictures go into its `images` folder. */
  readonly outFolder: string;
  /** After each original, whatever became of it. */
  readonly onProgress?: ((done: number, of: number) => void) | undefined;
}

export interface RenderedImages {
  readonly images: Images;
  /** In the order of the originals. A reason is a phrase that can follow "Found". */
  readonly refused: readonly { readonly file: string; readonly reason: string }[];
  /** Photographs, not files; copies of one photograph count once. */
  readonly encoded: number;
  readonly reused: number;
}

interface Made {
  readonly picture: PublishedPicture;
  readonly outcome: "encoded" | "reused";
}

/**
 * Writes every photograph in its sizes and formats, from the cache where it is there.
 * A photograph that cannot be shown is refused and holds up no other; a folder that cannot be written is an error.
 */
export async function renderImages(task: ImageTask): Promise<RenderedImages> {
  const folder = path.join(task.outFolder, "images");
  await mkdir(folder, { recursive: true });
  const cache = await openImageCache(task.cacheFolder);
  const cores = shareOfCores();
  const workers = slots(cores.workers);
  // One more than can be worked on, so that the next is ready; never more, since each holds its pixels.
  const inHand = slots(cores.workers + 1);
  const made = new Map<string, Promise<Made>>();
  const originals = [...new Set(task.originals)];
  let done = 0;
  let failed = false;

  const make = async (hash: string, bytes: Buffer): Promise<Made> => {
    const found = await cache.find(hash);
    const picture = found ?? (await encodePicture(hash, bytes, cache, workers));
    for (const name of entryNames(picture.sizes)) {
      await cache.place(hash, name, path.join(folder, publishedName(hash, name)));
    }
    return { picture, outcome: found ? "reused" : "encoded" };
  };

  /** The picture that an original became, or why it became none. */
  const render = async (file: string): Promise<Made | string> => {
    try {
      const bytes = await readOriginal(task.root, file);
      const hash = hashOf(bytes);
      const making = made.get(hash) ?? make(hash, bytes);
      made.set(hash, making);
      return await making;
    } catch (problem) {
      if (problem instanceof RefusedFile) return problem.message;
      failed = true;
      throw problem;
    }
  };

  const threads = sharp.concurrency();
  sharp.concurrency(cores.threads);
  try {
    const work = originals.map((file) =>
      inHand(async () => {
        // The first failure is the one that is passed on.
        if (failed) return "not tried";
        const result = await render(file);
        task.onProgress?.(++done, originals.length);
        return result;
      }),
    );
    await Promise.allSettled(work);
    return rendered(originals, await Promise.all(work));
  } finally {
    sharp.concurrency(threads);
  }
}

function rendered(originals: readonly string[], results: readonly (Made | string)[]): RenderedImages {
  const images = new Map<string, ImageSet>();
  const refused: { file: string; reason: string }[] = [];
  const distinct = new Map<string, Made>();
  for (const [at, file] of originals.entries()) {
    const result = results[at];
    if (typeof result === "object") {
      images.set(file, assembleSet(result.picture));
      distinct.set(result.picture.hash, result);
    } else if (result) refused.push({ file, reason: result });
  }
  const count = (outcome: Made["outcome"]) =>
    [...distinct.values()].filter((it) => it.outcome === outcome).length;
  return { images, refused, encoded: count("encoded"), reused: count("reused") };
}

/** Names a picture by all that decides what its files hold, and by nothing that says whose it is. */
function hashOf(bytes: Buffer): string {
  const key = JSON.stringify([settingsKey, sharp.versions]);
  return createHash("sha256").update(key).update(bytes).digest("hex").slice(0, 24);
}

/**
 * One picture to a core beats one picture over all cores. The platform's thread pool bounds how many there can be;
 * with more cores than that, each takes several.
 */
function shareOfCores(): { workers: number; threads: number } {
  const cores = availableParallelism();
  const pool = Number(process.env.UV_THREADPOOL_SIZE) || 4;
  const workers = Math.max(1, Math.min(cores, pool));
  return { workers, threads: Math.max(1, Math.floor(cores / workers)) };
}
