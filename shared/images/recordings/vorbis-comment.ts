import { RefusedFile } from "../refused-file.ts";
import type { ByteSource, Overwrite } from "./byte-source.ts";

/**
 * The second of three packets that set up Vorbis says who made it and what it is: spaces stand in the place of that.
 * Source  Matroska codec mappings, A_VORBIS: the number of packets less one, the lengths of the first two in bytes of 255
 *   and a rest; Vorbis I, 5.2.1: seven bytes, the length of the maker's name, the name, the number of comments, one bit
 */
export function* vorbisComment(source: ByteSource, from: number, to: number): Generator<Overwrite> {
  const head = source.read(from, Math.min(to - from, 64 * 1024));
  let at = 1;
  const lengths = [0, 0].map(() => {
    let length = 0;
    while (head[at] === 255) length += head[at++] ?? 0;
    return length + (head[at++] ?? 0);
  });
  const [first = 0, second = 0] = lengths;
  const comment = at + first;
  const isComment = head.toString("latin1", comment, comment + 7) === "\x03vorbis";
  if (head[0] !== 2 || !isComment || second < 16 || comment + second > head.length) {
    throw new RefusedFile("sound as Vorbis whose comments cannot be told from the rest");
  }
  const without = Buffer.alloc(second - 7, " ");
  without.writeUInt32LE(without.length - 9, 0);
  without.writeUInt32LE(0, without.length - 5);
  without[without.length - 1] = 1;
  yield { at: from + comment, bytes: Buffer.concat([Buffer.from("\x03vorbis", "latin1"), without]) };
}
