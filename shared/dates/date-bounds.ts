import { parse } from "edtf";
import { type DayNumber, dayNumber, daysInMonth } from "./day-number.ts";
import { longYears } from "./long-years.ts";
import { subYearMonths } from "./sub-year-months.ts";

/** The span within which one date lies, and what its qualifiers say of it. */
export interface DateBounds {
  readonly earliest: DayNumber;
  readonly latest: DayNumber;
  readonly uncertain: boolean;
  readonly approximate: boolean;
  /** In how many components the date is given: 1 a year, 2 a month or season, 3 a day. */
  readonly precision: number;
}

const DATE = /^[?~%]?(-?[\dX]{4})[?~%]?(?:-[?~%]?([\dX]{2})[?~%]?(?:-[?~%]?([\dX]{2})[?~%]?)?)?$/;
const PLAIN = /^-?\d{4}(?:-(?:0[1-9]|1[0-2])(?:-\d\d)?)?$/;
const DATE_AND_TIME = /^(-?\d{4}-\d\d-\d\d)T(?:[01]\d|2[0-3]):\d\d:\d\d(?:Z|[+-]\d\d(?::\d\d)?)?$/;

/**
 * The first and last day that a single EDTF date may mean; null where the text is none, and where it names
 * no day that exists (`1985-02-29`). Intervals, sets and times of day are not read here.
 *
 * The `edtf` package judges the syntax of whatever is more than a plain calendar date. The digits are read
 * from the text, because its tree rounds them to what some month allows (`1985-X2-30` becomes day 29) and lets
 * 29 February pass in every year. It also takes no qualifier beside an unspecified digit or a season (`192X~`,
 * `2001-21?`), which the specification allows there as in any other date; so the qualifiers come off before
 * it is asked. A year of which nothing is known (`XXXX`) is one of 0000 to 9999, as its four digits say.
 *
 * A qualifier is a flag and widens nothing: how far "approximate" reaches is nowhere defined.
 *
 * Source  Library of Congress, EDTF (4 February 2019)
 */
export function dateBounds(text: string): DateBounds | null {
  const span = longYearSpan(text) ?? writtenSpan(text);
  return span && { ...span, uncertain: /[?%]/.test(text), approximate: /[~%]/.test(text) };
}

/** A date with a time of day lies on the day that is written: the local one, whatever the shift from UTC. */
export function dateAndTimeBounds(text: string): DateBounds | null {
  const [, date] = DATE_AND_TIME.exec(text) ?? [];
  return date !== undefined && isSyntax(text) ? dateBounds(date) : null;
}

type Span = Pick<DateBounds, "earliest" | "latest" | "precision">;

function longYearSpan(text: string): Span | null {
  const years = longYears(text);
  return years && { earliest: dayNumber(years[0], 1, 1), latest: dayNumber(years[1], 12, 31), precision: 1 };
}

function writtenSpan(text: string): Span | null {
  const [, year, monthDigits, dayDigits] = DATE.exec(text) ?? [];
  const unqualified = text.replace(/[?~%]/g, "");
  // Most dates are plain, and asking the grammar takes longer than all the rest.
  if (year === undefined || !(PLAIN.test(unqualified) || isSyntax(unqualified))) return null;
  const years = yearsOf(year);
  const months = monthsOf(monthDigits);
  const daysOf = (of: number, month: number): number[] => {
    const most = daysInMonth(of, month);
    return dayDigits === undefined ? [1, most] : fillings(dayDigits).filter((day) => day >= 1 && day <= most);
  };
  const earliest = firstDay(years, months, (of, month) => daysOf(of, month)[0]);
  const latest = firstDay(years.toReversed(), months.toReversed(), (of, month) => daysOf(of, month).at(-1));
  if (earliest === null || latest === null) return null;
  return { earliest, latest, precision: [year, monthDigits, dayDigits].filter(Boolean).length };
}

/** The first combination that exists: for almost every date that is the very first. */
function firstDay(
  years: readonly number[],
  months: readonly number[],
  dayOf: (year: number, month: number) => number | undefined,
): DayNumber | null {
  for (const year of years) {
    for (const month of months) {
      const day = dayOf(year, month);
      if (day !== undefined) return dayNumber(year, month, day);
    }
  }
  return null;
}

function yearsOf(digits: string): number[] {
  if (!digits.startsWith("-")) return fillings(digits);
  // There is no year -0.
  const years = fillings(digits.slice(1)).filter((year) => year > 0);
  return years.map((year) => -year).reverse();
}

/** The months that may be meant; of a season or quarter, its first and last. */
function monthsOf(digits: string | undefined): readonly number[] {
  if (digits === undefined) return [1, 12];
  return subYearMonths(Number(digits)) ?? fillings(digits).filter((month) => month >= 1 && month <= 12);
}

/** Every number that the digits may stand for, X being any digit; ascending. */
function fillings(digits: string): number[] {
  let numbers = [0];
  for (const digit of digits) {
    const choices = digit === "X" ? [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] : [Number(digit)];
    numbers = numbers.flatMap((number) => choices.map((choice) => 10 * number + choice));
  }
  return numbers;
}

function isSyntax(text: string): boolean {
  try {
    parse(text);
    return true;
  } catch {
    return false;
  }
}
