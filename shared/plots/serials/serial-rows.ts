import { grouping } from "../../lists/grouping.ts";
import { isMasked } from "../../publication/masked-sign.ts";
import type { PublishedSerialRange } from "../../publication/published.ts";
import { prefixKey, publishedNumberInRange, rangeOf, serialKey } from "../../publication/serial-number.ts";

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
  /** Those that lie in a range of another variant than that of which they were seen. */
  readonly misplaced: number;
}

export function serialRows(series: readonly SerialSeries[], own: string | null): SerialRows {
  const found = series.map((each) => rowsOf(each, own));
  const outside = [...new Set(found.flatMap(({ outside: keys }) => keys))];
  const ranges = series.flatMap((each) => each.ranges);
  const misplaced = outside.filter((serial) => rangeOf(ranges, serial) !== undefined).length;
  return {
    groups: [
      ...grouping(
        found.flatMap(({ rows }) => rows),
        ({ range }) => prefixKey(range),
      ).values(),
    ],
    unplaced: outside.length - misplaced,
    misplaced,
  };
}

function rowsOf(
  { name, ranges, seen }: SerialSeries,
  own: string | null,
): { readonly rows: readonly SerialRow[]; readonly outside: readonly string[] } {
  const numbers = new Map(ranges.map((range) => [range, new Set<number>()]));
  const outside: string[] = [];
  for (const [key, serial] of new Map(seen.map((each) => [serialKey(each), each]))) {
    if (isMasked(serial)) continue;
    const range = rangeOf(ranges, serial);
    const number = range && publishedNumberInRange(range, serial);
    if (range === undefined || number === undefined) outside.push(key);
    else numbers.get(range)?.add(number);
  }
  const ownRange = own === null ? undefined : rangeOf(ranges, own);
  const rows = ranges.map((range): SerialRow => {
    const ownNumber = own !== null && range === ownRange ? publishedNumberInRange(range, own) : undefined;
    const inside = [...(numbers.get(range) ?? [])].sort((a, b) => a - b);
    const known = [range.from, range.to, ownNumber, ...inside].flatMap((number) => number ?? []);
    return {
      name,
      range,
      low: range.from ?? known.reduce((a, b) => Math.min(a, b), known[0] ?? 1),
      high: range.to ?? known.reduce((a, b) => Math.max(a, b), known[0] ?? 1),
      seen: inside,
      own: ownNumber ?? null,
    };
  });
  return { rows, outside };
}
