import { RefusedFile } from "../refused-file.ts";
import { type ByteSource, lookedAt, type Overwrite } from "./byte-source.ts";
import { flacBlocks } from "./flac-blocks.ts";
import { flacSoundEnd } from "./flac-frames.ts";

const mostLooks = 1_000_000;

/**
 * What stands before the sound becomes padding; behind it there may be nothing. Where a frame of FLAC ends is only known by
 * its checksum, so that a file which is not frames to its very end is refused. Throws RefusedFile.
 */
export function* flacOverwrites(given: ByteSource): Generator<Overwrite> {
  const source = lookedAt(given, mostLooks);
  const start = yield* flacBlocks(source, 4, source.size);
  const end = flacSoundEnd(source, start);
  if (end < source.size) {
    throw new RefusedFile(
      `sound as FLAC with something else in it, or broken off, from byte ${(end + 1).toLocaleString("en")} on`,
      "Save it again as FLAC.",
    );
  }
}
