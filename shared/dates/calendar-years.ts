import { yearOf } from "./day-number.ts";
import type { DayBound, EdtfDate } from "./edtf-interval.ts";

/** The first and last calendar year; infinite where an end is open, null where it is not known. */
export interface CalendarYears {
  readonly first: number | null;
  readonly last: number | null;
  /**
   * Those that it goes through whenever it began and ended; null where it may be any one of several. What has no
   * beginning began nobody knows when, so that only its end is sure.
   */
  readonly through: { readonly first: number; readonly last: number } | null;
}

/**
 * The calendar years that a date may reach into, from the earliest day on which it may begin to the latest
 * on which it may end.
 * Checks   calendarYears(parseEdtf("1931-05/1938")) => { first: 1931, last: 1938, through: { first: 1931, last: 1938 } }
 *          calendarYears(parseEdtf("193X/1945")) => { first: 1930, last: 1945, through: { first: 1939, last: 1945 } }
 *          calendarYears(parseEdtf("193X")) => { first: 1930, last: 1939, through: null }
 */
export function calendarYears(date: EdtfDate): CalendarYears {
  const begun = date.latestStart === Number.NEGATIVE_INFINITY ? null : yearOfBound(date.latestStart);
  const over = yearOfBound(date.earliestEnd);
  const [first, last] = [begun ?? over, over ?? begun];
  return {
    first: yearOfBound(date.earliest),
    last: yearOfBound(date.latest),
    through: first === null || last === null || first > last ? null : { first, last },
  };
}

function yearOfBound(bound: DayBound): number | null {
  return Number.isFinite(bound) ? yearOf(bound as number) : bound;
}
