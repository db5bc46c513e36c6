import { yearOf } from "./day-number.ts";
import type { DayBound, EdtfDate } from "./edtf-interval.ts";

/** The first and last calendar year; infinite where an end is open, null where it is not known. */
export interface CalendarYears {
  readonly first: number | null;
  readonly last: number | null;
}

/**
 * The calendar years that a date may reach into, from the earliest day on which it may begin to the latest
 * on which it may end.
 * Checks   calendarYears(parseEdtf("1931-05/1938")) => { first: 1931, last: 1938 }
 *          calendarYears(parseEdtf("1931/..")) => { first: 1931, last: Infinity }
 */
export function calendarYears(date: EdtfDate): CalendarYears {
  return { first: yearOfBound(date.earliest), last: yearOfBound(date.latest) };
}

function yearOfBound(bound: DayBound): number | null {
  return Number.isFinite(bound) ? yearOf(bound as number) : bound;
}
