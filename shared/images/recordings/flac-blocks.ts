import { type ByteSource, type Overwrite, zeros } from "./byte-source.ts";

/** The stream's own description and the table for jumping (RFC 9639, 8.2 and 8.5), and how long each can be. */
const longest: Readonly<Record<number, number>> = { 0: 34, 3: 0xffffff };

/** Of what a container has to set a decoder up with: nothing stands behind the blocks. */
export function* flacSetup(source: ByteSource, from: number, to: number): Generator<Overwrite> {
  yield* zeros(yield* flacBlocks(source, from, to), to);
}

/**
 * Comments, pictures, cue sheets and what programs left become padding, up to the last block; returns where that ends.
 * Source  RFC 9639, 8.1 and 8.3
 */
export function* flacBlocks(source: ByteSource, from: number, to: number): Generator<Overwrite, number> {
  let at = from;
  for (;;) {
    const head = source.read(at, 4);
    if (at + 4 > to || head.length < 4) {
      yield* zeros(at, to);
      return to;
    }
    const last = (head[0] ?? 0) & 0x80;
    const end = Math.min(at + 4 + head.readUIntBE(1, 3), to);
    if (end - at - 4 > (longest[(head[0] ?? 0) & 0x7f] ?? -1)) {
      yield { at, bytes: Uint8Array.of(last | 1) };
      yield* zeros(at + 4, end);
    }
    at = end;
    if (last) return at;
  }
}
