import { fstatSync, readSync } from "node:fs";
import { RefusedFile } from "../refused-file.ts";

/** A file as far as it is looked at: recordings are larger than what should be in memory. */
export interface ByteSource {
  readonly size: number;
  /** As many of the bytes as there are. */
  readonly read: (at: number, length: number) => Buffer;
}

/** Bytes to write over others; a number is so many zeros. */
export interface Overwrite {
  readonly at: number;
  readonly bytes: Uint8Array | number;
}

/** Zeros from one place to another; nothing where that is no way forward. */
export const zeros = (from: number, to: number): readonly Overwrite[] =>
  to > from ? [{ at: from, bytes: to - from }] : [];

const window = 16 * 1024;

/** Of an open file. What is read of it in small pieces comes out of a larger one. */
export function byteSource(descriptor: number): ByteSource {
  const { size } = fstatSync(descriptor);
  const near = Buffer.alloc(window);
  let [from, to] = [0, 0];
  return {
    size,
    read(at, length) {
      if (at < 0 || at >= size || length <= 0) return Buffer.alloc(0);
      const bytes = Buffer.alloc(Math.min(length, size - at));
      if (length > window / 16) return bytes.subarray(0, readSync(descriptor, bytes, 0, bytes.length, at));
      if (at < from || at + bytes.length > to)
        [from, to] = [at, at + readSync(descriptor, near, 0, window, at)];
      return bytes.subarray(0, near.copy(bytes, 0, at - from, Math.min(at - from + bytes.length, to - from)));
    },
  };
}

/** The same file for whoever may look at it so often and no more: one of ever smaller pieces would take for ever. */
export function lookedAt(source: ByteSource, most: number): ByteSource {
  let left = most;
  return {
    size: source.size,
    read(at, length) {
      if (left-- === 0) throw new RefusedFile(`a file in more than ${most.toLocaleString("en")} pieces`);
      return source.read(at, length);
    },
  };
}
