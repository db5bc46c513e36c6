import type { ByteSource } from "./byte-source.ts";

export interface IsoBox {
  readonly type: string;
  /** Of its header, of what it holds, and of what comes after it. */
  readonly start: number;
  readonly data: number;
  readonly end: number;
}

/** The boxes between two places, one after the other; ends where what is there is no box. ISO/IEC 14496-12, 4.2 */
export function* isoBoxes(source: ByteSource, from: number, to: number): Generator<IsoBox> {
  let start = from;
  while (start + 8 <= to) {
    const head = source.read(start, 16);
    if (head.length < 8) return;
    const type = head.toString("latin1", 4, 8);
    const short = head.readUInt32BE(0);
    const long = short === 1;
    if (long && head.length < 16) return;
    const size = long ? Number(head.readBigUInt64BE(8)) : short === 0 ? to - start : short;
    const data = start + (long ? 16 : 8);
    const end = start + size;
    if (end < data || end > to) return;
    yield { type, start, data, end };
    start = end;
  }
}

export const within = (source: ByteSource, { data, end }: IsoBox): readonly IsoBox[] => [
  ...isoBoxes(source, data, end),
];
