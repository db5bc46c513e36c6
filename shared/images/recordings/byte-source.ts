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
