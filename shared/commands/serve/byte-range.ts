export interface ByteRange {
  readonly start: number;
  /** The last byte, itself included. */
  readonly end: number;
}

/**
 * What a `Range` header asks for of a file of a size: the whole (null) where there is no such header or one that
 * may be passed over, "none" where the file has nothing of it.
 * Source  RFC 9110, 14.1.2 and 14.2; several ranges at once may be answered with the whole.
 */
export function byteRange(header: string | undefined, size: number): ByteRange | "none" | null {
  const match = /^bytes=(\d*)-(\d*)$/.exec(header ?? "");
  if (!match || (match[1] === "" && match[2] === "")) return null;
  const [first, last] = [match[1] ?? "", match[2] ?? ""];
  if (first === "") {
    const length = Math.min(Number(last), size);
    return length === 0 ? "none" : { start: size - length, end: size - 1 };
  }
  const start = Number(first);
  const end = last === "" ? size - 1 : Math.min(Number(last), size - 1);
  if (last !== "" && Number(last) < start) return null;
  return start >= size ? "none" : { start, end };
}
