import sharp from "sharp";
import { entryName, type PublishedPicture } from "./assemble-set.ts";
import { averageColour } from "./average-colour.ts";
import type { ImageCache } from "./image-cache.ts";
import { type Encoding, encodingsAt, planSizes, type Size } from "./plan-image.ts";
import { RefusedFile } from "./refused-file.ts";
import { type Slots, slots } from "./slots.ts";
import { decodeUpright, type Pixels, resized, uprightSize } from "./upright-picture.ts";

/** A decoder holds a large picture whole where it has to be turned: one of these at a time. */
const largePixels = 40_000_000;
const onlyOne = slots(1);

/** Makes all files of a picture and keeps them in the cache. Throws RefusedFile. */
export async function encodePicture(
  hash: string,
  bytes: Buffer,
  cache: ImageCache,
  workers: Slots,
): Promise<PublishedPicture> {
  const upright = await workers(() => uprightSize(bytes));
  const sizes = planSizes(upright);
  const largest = await decodedLargest(bytes, upright, sizes.at(-1) ?? sizes[0], workers);
  const digests = new Map<string, string>();
  let colour = "";

  const finish = async (size: Size) => {
    const picture = await workers(() => resized(largest, size));
    if (size === sizes[0]) colour = averageColour(picture.rgb);
    await settled(
      encodingsAt(size.width).map((encoding) =>
        workers(async () => {
          const name = entryName(size.width, encoding.extension);
          digests.set(name, await cache.keepFile(hash, name, await encoded(picture, encoding)));
        }),
      ),
    );
  };
  // The largest first: what takes longest must not be what is left at the end.
  await settled([...sizes].reverse().map(finish));
  const picture = { hash, colour, sizes };
  await cache.keepRecord(picture, digests);
  return picture;
}

function decodedLargest(bytes: Buffer, upright: Size, size: Size, workers: Slots): Promise<Pixels> {
  const decode = () => workers(() => decodeUpright(bytes, size));
  return upright.width * upright.height > largePixels ? onlyOne(decode) : decode();
}

async function encoded({ rgb, width, height }: Pixels, encoding: Encoding): Promise<Buffer> {
  const picture = sharp(rgb, { raw: { width, height, channels: 3 } });
  try {
    return await picture.toFormat(encoding.format, encoding.options).toBuffer();
  } catch (problem) {
    throw new RefusedFile(
      `a picture that cannot be written as ${encoding.format} (${problem instanceof Error ? problem.message : "unknown reason"})`,
    );
  }
}

/** Waits for all of them before it passes on the first failure, so that nothing goes on behind the caller's back. */
async function settled<T>(work: readonly Promise<T>[]): Promise<T[]> {
  await Promise.allSettled(work);
  return Promise.all(work);
}
