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
 * The form in which two serials are one: what parts letters from their number, and zeros before it, tell no examples apart
 * either, where one log has "HQ-077" and another "HQ77".
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

export const rangeOf = (ranges: readonly SerialRange[], serial: string): SerialRange | undefined =>
  ranges.find((range) => numberInRange(range, serial) !== undefined);

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
    .map(({ prefix, from, to }) => {
      const [first, last] = [from, to].map((number) =>
        number === undefined ? undefined : `${prefix}${number}`,
      );
      if (first !== undefined && last !== undefined) return `${first} to ${last}`;
      if (first !== undefined) return `${first} and on`;
      return last === undefined ? `${prefix}…` : `up to ${last}`;
    })
    .join(", ");
