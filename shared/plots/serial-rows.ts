import type { PublishedSerialRange } from "../publication/published.ts";

/** A range with what lies in it, on the scale of its prefix. */
export interface SerialRow {
  readonly range: PublishedSerialRange;
  /** As far as it is known or seen to reach. */
  readonly low: number;
  readonly high: number;
  readonly seen: readonly number[];
  readonly own: number | null;
}

export interface SerialRows {
  /** Ranges of one prefix, in the order of the reference. */
  readonly groups: readonly (readonly SerialRow[])[];
  /** Different serials that lie in no range. */
  readonly unplaced: number;
}

/** Letter case and spaces never tell two serials apart. */
const fold = (serial: string): string => serial.normalize("NFKC").replace(/\s+/g, "").toUpperCase();

/** What a masked serial has in place of its digits: where it lies is nobody's to know. */
const masked = "\u2022";

export function serialRows(
  ranges: readonly PublishedSerialRange[],
  seen: readonly string[],
  own: string | null,
): SerialRows {
  const numbers = ranges.map(() => new Set<number>());
  let unplaced = 0;
  for (const serial of new Set(seen.map(fold))) {
    if (serial.includes(masked)) continue;
    const at = ranges.findIndex((range) => numberIn(range, serial) !== null);
    const range = ranges[at];
    const number = range ? numberIn(range, serial) : null;
    if (number === null) unplaced++;
    else numbers[at]?.add(number);
  }
  const ownSerial = own === null ? "" : fold(own);
  const ownAt = ranges.findIndex((range) => numberIn(range, ownSerial) !== null);
  const groups = new Map<string, SerialRow[]>();
  ranges.forEach((range, at) => {
    const ownNumber = at === ownAt ? numberIn(range, ownSerial) : null;
    const inside = [...(numbers[at] ?? [])].sort((a, b) => a - b);
    const known = [range.from, range.to, ownNumber, ...inside].flatMap((number) => number ?? []);
    const row = {
      range,
      low: range.from ?? known.reduce((a, b) => Math.min(a, b), known[0] ?? 1),
      high: range.to ?? known.reduce((a, b) => Math.max(a, b), known[0] ?? 1),
      seen: inside,
      own: ownNumber,
    };
    const prefix = fold(range.prefix);
    groups.set(prefix, [...(groups.get(prefix) ?? []), row]);
  });
  return { groups: [...groups.values()], unplaced };
}

function numberIn({ prefix, from, to }: PublishedSerialRange, folded: string): number | null {
  const start = fold(prefix);
  if (!folded.startsWith(start)) return null;
  const digits = folded.slice(start.length);
  if (!/^\d{1,15}$/.test(digits)) return null;
  const number = Number(digits);
  return (from !== null && number < from) || (to !== null && number > to) ? null : number;
}
