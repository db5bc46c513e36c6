import { grouping } from "../../lists/grouping.ts";
import { type Limits, limitsOf, numberInRange, rangeOf, type SerialRange } from "../../records/serial.ts";
import type { Variant } from "../../records/variant.ts";
import type { Estimate } from "../../statistics/interval.ts";
import { serialTotal, serialTotalUnknownStart } from "../../statistics/serial-total.ts";
import { type Basis, type Figure, figure, type Input, withheld } from "../figure.ts";
import { type Statement, statement } from "../statement.ts";

type RangeTotal =
  | { readonly estimate: Estimate; readonly input: Input }
  | { readonly why: Statement; readonly input: Input };

/** One range: its length where both ends are known, else an estimate from the serials seen that lie in it and in no other. */
function totalOf(
  range: SerialRange,
  limits: Limits,
  serials: readonly string[],
  confidence: number,
): RangeTotal {
  const { prefix, from, to } = range;
  if (from !== undefined && to !== undefined) {
    const length = to - from + 1;
    return { estimate: { value: length, low: length, high: length }, input: { prefix, from, to } };
  }
  const ends = { prefix, from: from ?? null, to: to ?? null, ...limits };
  const numbers = [...new Set(serials.flatMap((serial) => numberInRange(range, serial) ?? []))];
  const distinct = numbers.length;
  const isBounded = from !== undefined || to !== undefined;
  // Without a known end the smallest serial is spent on finding where to count from.
  const needed = isBounded ? 2 : 3;
  if (distinct < needed) {
    return { why: statement("too-few-serials", { distinct, needed }), input: { ...ends, distinct } };
  }
  const largest = numbers.reduce((a, b) => Math.max(a, b));
  const smallest = numbers.reduce((a, b) => Math.min(a, b));
  /** No more than there are numbers up to the ranges beside it. */
  const atMost = ({ value, low, high }: Estimate, most: number): Estimate => ({
    value: Math.min(value, most),
    low,
    high: Math.min(high, most),
  });
  if (from !== undefined) {
    const counted = largest - from + 1;
    const most = (limits.before ?? Number.POSITIVE_INFINITY) - from;
    return {
      estimate: atMost(serialTotal({ distinct, largest: counted }, confidence), most),
      input: { ...ends, distinct, largest: counted },
    };
  }
  if (to !== undefined) {
    // The same backwards, since numbers seen at random lie as far from the one end as from the other: but there are no
    // numbers below the first, which is 1, or 0 where that was seen.
    const fromEnd = to - smallest + 1;
    const most = to - (limits.after ?? (smallest === 0 ? -1 : 0));
    return {
      estimate: atMost(serialTotal({ distinct, largest: fromEnd }, confidence), most),
      input: { ...ends, distinct, fromEnd },
    };
  }
  const span = largest - smallest + 1;
  return {
    estimate: serialTotalUnknownStart({ distinct, span }, confidence),
    input: { ...ends, distinct, span },
  };
}

/** A serial, and who tells of it. */
export interface SeenSerial {
  readonly serial: string;
  readonly sources: readonly (string | undefined)[];
}

/** Serials seen of a variant, as far as an estimate may be made from them. */
export interface SeenSerials {
  /** Those free to be published: an estimate from any other would give away how large it is. */
  readonly shown: readonly SeenSerial[];
  readonly withheld: readonly string[];
  /** Examples of which the record has other serials as well. */
  readonly misread: number;
}

/** How many were made: as documented, else summed over the serial ranges, end by end. */
export function assessMade(variant: Variant, serials: SeenSerials, confidence: number): Figure {
  const { made } = variant;
  const unit = "examples";
  if (made) {
    const basis: Basis = {
      unit,
      confidence,
      method: "documented",
      inputs: { low: made.low, high: made.high, page: made.page ?? null },
      sources: [made.source],
    };
    return made.low === made.high
      ? figure({ value: made.low, low: made.low, high: made.high }, basis)
      : {
          ...withheld(statement("made-only-a-range", { low: made.low, high: made.high }), basis),
          low: made.low,
          high: made.high,
        };
  }
  const ranges = variant.serials;
  const seen = grouping(serials.shown, ({ serial }) => rangeOf(ranges, serial));
  const seenIn = (range: SerialRange) => seen.get(range) ?? [];
  const totals = ranges.map((range) => {
    const within = seenIn(range).map(({ serial }) => serial);
    return totalOf(range, limitsOf(range, ranges), within, confidence);
  });
  const open = ranges.filter((range) => range.from === undefined || range.to === undefined);
  const isOpen = open.length > 0;
  const isInOpen = (range: SerialRange | undefined) => range !== undefined && open.includes(range);
  const leftOut = serials.withheld.filter((serial) => isInOpen(rangeOf(ranges, serial))).length;
  const basis: Basis = {
    unit,
    confidence,
    method: "serial-ranges",
    inputs: { ranges: totals.map(({ input }) => input) },
    // The length of a closed range rests on its record alone, an estimate on whoever tells of the serials, too.
    sources: [
      ...ranges.map((range) => range.source),
      ...open.flatMap((range) => seenIn(range).flatMap(({ sources }) => sources)),
    ],
    caveats: [
      ...(isOpen ? [statement("assumes-random-serials")] : []),
      ...(isOpen && ranges.length > 1
        ? [statement("serials-in-several-blocks", { ranges: ranges.length })]
        : []),
      ...(leftOut > 0 ? [statement("serials-not-shown", { serials: leftOut })] : []),
      ...(serials.misread > 0 ? [statement("serials-misread", { examples: serials.misread })] : []),
    ],
  };
  if (ranges.length === 0) return withheld(statement("made-unknown"), basis);
  if (ranges.some((range) => range.skipped)) return withheld(statement("serials-skipped"), basis);
  const sum = { value: 0, low: 0, high: 0 };
  for (const total of totals) {
    if ("why" in total) return withheld(total.why, basis);
    sum.value += total.estimate.value;
    sum.low += total.estimate.low;
    sum.high += total.estimate.high;
  }
  return figure(sum, basis);
}
