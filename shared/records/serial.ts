import type { EdtfDate } from "../dates/edtf-interval.ts";
import { asDate, asText } from "./text.ts";

/** A run of serials; an end that is undefined is not known. */
export interface SerialRange {
  readonly prefix: string;
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly made: EdtfDate | undefined;
  readonly skipped: boolean;
  readonly source: string | undefined;
  readonly page: string | undefined;
  readonly note: string | undefined;
  /** What the ranges of other variants of its family tell of the end that is not known. */
  readonly limits?: Limits;
}

export interface RawSerialRange {
  prefix?: string | number;
  from?: number;
  to?: number;
  made?: string | number;
  skipped?: boolean;
  source?: string;
  page?: string | number;
  note?: string;
}

export const serialRange = (raw: RawSerialRange): SerialRange => ({
  prefix: asText(raw.prefix) ?? "",
  from: raw.from,
  to: raw.to,
  made: asDate(raw.made),
  skipped: raw.skipped ?? false,
  source: raw.source,
  page: asText(raw.page),
  note: raw.note,
});

/** A text off a thing as two of them are compared, a mark or a serial: without its spaces, in capitals. */
export const foldSerial = (serial: string): string =>
  serial.normalize("NFKC").replace(/\s+/g, "").toUpperCase();

/**
 * The form in which two serials are the same: what separates letters from their number, and zeros before the number,
 * tell no examples apart, since one log has "HQ-077" where another has "HQ77".
 */
export const serialKey = (serial: string): string => tight(serial).replace(/(?<!\p{Nd})0+(?=\p{Nd})/gu, "");

/** Without what parts letters from the number behind them; a prefix ends where its number would begin. */
export const tight = (serial: string): string =>
  foldSerial(serial).replace(/(?<=\p{L})[./\u2010-\u2015-]+(?=\p{Nd}|$)/gu, "");

/**
 * The running number of a serial that has the range's prefix and nothing else, and lies within its ends, as far as they
 * are known.
 */
export function numberInRange(
  { prefix, from, to }: Pick<SerialRange, "prefix" | "from" | "to">,
  serial: string,
): number | undefined {
  const folded = tight(serial);
  const start = tight(prefix);
  if (!folded.startsWith(start)) return undefined;
  const digits = folded.slice(start.length);
  if (!/^\d{1,15}$/.test(digits)) return undefined;
  const number = Number(digits);
  return (from !== undefined && number < from) || (to !== undefined && number > to) ? undefined : number;
}

/**
 * Whether a serial can be read as letters and a number, so that it can lie outside a range: it has a digit, and no
 * sign that stands for what could not be read. A point between letters belongs to an abbreviation ("No. H77").
 */
export function isLegible(serial: string): boolean {
  const folded = tight(serial);
  return (
    /^[\p{L}\p{Nd}]+(?:[./\u2010-\u2015-][\p{L}\p{Nd}]+)*$/u.test(folded) &&
    /\p{Nd}/u.test(folded) &&
    !/\p{L}\.\p{L}/u.test(folded)
  );
}

/** A range as whoever counts, dates or draws has it. */
export interface RangeEnds {
  readonly prefix: string;
  readonly from: number | null | undefined;
  readonly to: number | null | undefined;
  readonly skipped: boolean;
  readonly limits?: Limits;
}

/**
 * What the ranges beside one say about its end that is not known: it ends before the next range of its prefix, or
 * begins after the one before.
 */
export interface Limits {
  readonly after?: number;
  readonly before?: number;
}

/** By the ranges given, and by those of other variants. Numbers that were left unused may lie within a range, and end none. */
export function limitsOf<Range extends RangeEnds>(range: Range, ranges: readonly Range[]): Limits {
  const { from, to, limits = {} } = range;
  if (isClosed(range) || (from ?? to) == null) return {};
  const prefix = tight(range.prefix);
  const beside = ranges.filter((each) => each !== range && !each.skipped && tight(each.prefix) === prefix);
  if (from != null) {
    const firsts = [...beside.map((each) => each.from ?? each.to), limits.before];
    const next = firsts.flatMap((first) => first ?? []).filter((first) => first > from);
    return next.length === 0 ? {} : { before: next.reduce((a, b) => Math.min(a, b)) };
  }
  const lasts = [...beside.map((each) => each.to ?? each.from), limits.after];
  const earlier = lasts.flatMap((last) => last ?? []).filter((last) => last < (to ?? last));
  return earlier.length === 0 ? {} : { after: earlier.reduce((a, b) => Math.max(a, b)) };
}

const isClosed = ({ from, to }: RangeEnds): boolean => from != null && to != null;

/**
 * The one range in which a serial lies, for counting, dating and drawing alike. A range with both ends known goes
 * before an open one, and an open one reaches no further than the next of its prefix.
 */
export function rangeOf<Range extends RangeEnds>(
  ranges: readonly Range[],
  serial: string,
): Range | undefined {
  const holding = ranges.filter((range) => {
    const { prefix, from, to } = range;
    const number = numberInRange({ prefix, from: from ?? undefined, to: to ?? undefined }, serial);
    if (number === undefined) return false;
    const { after = Number.NEGATIVE_INFINITY, before = Number.POSITIVE_INFINITY } = limitsOf(range, ranges);
    return after < number && number < before;
  });
  const hasAnEnd = ({ from, to }: Range) => (from ?? to) != null;
  return holding.find(isClosed) ?? holding.find(hasAnEnd) ?? holding[0];
}

export const isReversed = ({ from, to }: SerialRange): boolean =>
  from !== undefined && to !== undefined && to < from;

/** Whether two ranges certainly hold a number in common: of one whose other end is not known, that which is lies in it. */
export function overlap(one: SerialRange, other: SerialRange): boolean {
  if (tight(one.prefix) !== tight(other.prefix)) return false;
  const first = ({ from, to }: SerialRange) => from ?? to ?? Number.NaN;
  const last = ({ from, to }: SerialRange) => to ?? from ?? Number.NaN;
  return first(one) <= last(other) && last(one) >= first(other);
}

/** "A1 to A240, B1 and on": the ranges as somebody would say them. */
export const rangesInWords = (ranges: readonly SerialRange[]): string =>
  ranges
    .map(({ prefix, from, to, limits: { after, before } = {} }) => {
      const [first, last] = [from, to].map((number) =>
        number === undefined ? undefined : `${prefix}${number}`,
      );
      if (first !== undefined && last !== undefined) return `${first} to ${last}`;
      if (first !== undefined)
        return `${first} and on${before === undefined ? "" : ` (before ${prefix}${before})`}`;
      if (last === undefined) return `${prefix}…`;
      return `up to ${last}${after === undefined ? "" : ` (after ${prefix}${after})`}`;
    })
    .join(", ");
