import { grouping } from "../lists/grouping.ts";
import type { PublishedSerialRange } from "../publication/published.ts";

/** The ranges of one variant, with the serials that were seen of it. */
export interface SerialSeries {
  /** Its name where several stand beside one another. */
  readonly name: string | null;
  readonly ranges: readonly PublishedSerialRange[];
  readonly seen: readonly string[];
}

/** A range with what lies in it, on the scale of its prefix. */
export interface SerialRow {
  readonly name: string | null;
  readonly range: PublishedSerialRange;
  /** As far as it is known or seen to reach. */
  readonly low: number;
  readonly high: number;
  readonly seen: readonly number[];
  readonly own: number | null;
}

export interface SerialRows {
  /** Ranges of one prefix, in the order in which they are given. */
  readonly groups: readonly (readonly SerialRow[])[];
  /** Different serials that lie in no range. */
  readonly unplaced: number;
}

/** Letter case and spaces never tell two serials apart. */
const fold = (serial: string): string => serial.normalize("NFKC").replace(/\s+/g, "").toUpperCase();

/** What a masked serial has in place of its digits: where it lies is nobody's to know. */
const masked = "\u2022";

export function serialRows(series: readonly SerialSeries[], own: string | null): SerialRows {
  const found = series.map((each) => rowsOf(each, own));
  return {
    groups: [
      ...grouping(
        found.flatMap(({ rows }) => rows),
        ({ range }) => fold(range.prefix),
      ).values(),
    ],
    unplaced: found.reduce((sum, { unplaced }) => sum + unplaced, 0),
  };
}

function rowsOf(
  { name, ranges, seen }: SerialSeries,
  own: string | null,
): { readonly rows: readonly SerialRow[]; readonly unplaced: number } {
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
  const rows = ranges.map((range, at): SerialRow => {
    const ownNumber = at === ownAt ? numberIn(range, ownSerial) : null;
    const inside = [...(numbers[at] ?? [])].sort((a, b) => a - b);
    const known = [range.from, range.to, ownNumber, ...inside].flatMap((number) => number ?? []);
    return {
      name,
      range,
      low: range.from ?? known.reduce((a, b) => Math.min(a, b), known[0] ?? 1),
      high: range.to ?? known.reduce((a, b) => Math.max(a, b), known[0] ?? 1),
      seen: inside,
      own: ownNumber,
    };
  });
  return { rows, unplaced };
}

function numberIn({ prefix, from, to }: PublishedSerialRange, folded: string): number | null {
  const start = fold(prefix);
  if (!folded.startsWith(start)) return null;
  const digits = folded.slice(start.length);
  if (!/^\d{1,15}$/.test(digits)) return null;
  const number = Number(digits);
  return (from !== null && number < from) || (to !== null && number > to) ? null : number;
}
