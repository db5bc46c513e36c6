import type { ByteSource } from "./byte-source.ts";

export interface EbmlElement {
  readonly id: number;
  readonly start: number;
  readonly data: number;
  /** Where the file breaks off, if it does so within; null where the file leaves it open. */
  readonly end: number | null;
}

export const segment = 0x18538067;
export const info = 0x1549a966;
export const cluster = 0x1f43b675;

/** The elements between two places, one after the other. EBML (RFC 8794), 4 */
export function* elements(source: ByteSource, from: number, to: number): Generator<EbmlElement> {
  let start = from;
  while (start < to) {
    const head = source.read(start, 12);
    const idLength = lengthOf(head[0]);
    const sizeLength = lengthOf(head[idLength]);
    if (idLength > 4 || sizeLength > 8 || head.length < idLength + sizeLength) return;
    const id = head.readUIntBE(0, idLength);
    const data = start + idLength + sizeLength;
    const size = sizeIn(head.subarray(idLength, idLength + sizeLength));
    const end = size === null ? null : Math.min(data + size, to);
    yield { id, start, data, end };
    // What a live recording leaves open is a cluster: what is in it cannot be taken for a section.
    if (end === null && id !== cluster) return;
    start = end ?? data;
  }
}

/** Of a number whose first byte says, by its leading zeros, how many bytes it has. */
const lengthOf = (first: number | undefined): number =>
  first === undefined || first === 0 ? 9 : Math.clz32(first) - 23;

function sizeIn(bytes: Buffer): number | null {
  const mask = 0xff >> bytes.length;
  let value = (bytes[0] ?? 0) & mask;
  let open = value === mask;
  for (const byte of bytes.subarray(1)) {
    value = value * 256 + byte;
    open &&= byte === 0xff;
  }
  return open ? null : value;
}
