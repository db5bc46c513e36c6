import { type ByteSource, type Overwrite, zeros } from "./byte-source.ts";
import { type IsoBox, isoBoxes } from "./iso-boxes.ts";

/** What is written over of a box that is kept. */
export type Kept = (source: ByteSource, box: IsoBox) => readonly Overwrite[];

/** A box that is dropped becomes free space (8.1.2), so that every place in the file is where it was. */
export const asFreeSpace = ({ start, data, end }: IsoBox): readonly Overwrite[] => [
  { at: start + 4, bytes: Buffer.from("free", "latin1") },
  ...zeros(data, end),
];

/** What a decoder is set up with. */
export const whole: Kept = () => [];

/** So many bytes, without some of them; whatever is behind them goes. */
export const fields =
  (length: number, ...without: readonly (readonly [number, number])[]): Kept =>
  (_, { data, end }) => [
    ...without.flatMap(([from, to]) => zeros(Math.min(data + from, end), Math.min(data + to, end))),
    ...zeros(data + length, end),
  ];

/** Entries of so many bytes; how many, stands before them. */
export const entries =
  (length: number): Kept =>
  (source, box) => {
    const head = source.read(box.data + 4, 4);
    return head.length < 4 ? [] : fields(8 + length * head.readUInt32BE(0))(source, box);
  };

/** The boxes in a box, behind so many bytes of its own: those that have a meaning here, and no other. */
export const inside =
  (keptOf: (type: string) => Kept | undefined, own = 0): Kept =>
  (source, { data, end }) => {
    const overwrites: (readonly Overwrite[])[] = [];
    let rest = data + own;
    for (const box of isoBoxes(source, rest, end)) {
      overwrites.push(keptOf(box.type)?.(source, box) ?? asFreeSpace(box));
      rest = box.end;
    }
    return [...overwrites.flat(), ...zeros(rest, end)];
  };

/** The same, of what lies in a table by name. */
export const only = (kept: Readonly<Record<string, Kept>>, own = 0): Kept =>
  inside((type) => kept[type], own);
