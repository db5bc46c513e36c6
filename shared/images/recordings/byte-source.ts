import { fstatSync, readSync } from "node:fs";

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

/** Of an open file. */
export function byteSource(descriptor: number): ByteSource {
  const { size } = fstatSync(descriptor);
  return {
    size,
    read(at, length) {
      if (at < 0 || at >= size || length <= 0) return Buffer.alloc(0);
      const bytes = Buffer.alloc(Math.min(length, size - at));
      return bytes.subarray(0, readSync(descriptor, bytes, 0, bytes.length, at));
    },
  };
}
