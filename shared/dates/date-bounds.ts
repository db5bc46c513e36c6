import { parse } from "edtf";
import { type DayNumber, dayNumber, daysInMonth } from "./day-number.ts";
import { significantYears } from "./significant-years.ts";
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
const DATE_AND_TIME = /^(-?\d{4}-\d\d-\d\d)T(?:[01]\d|2[0-3]):\d\d:\d\d(?:Z|[+-]\d\d(?::\d\d)?)?$/;
const LONG_YEAR = /^(?:Y-?\d{1,20}(?:E\d{1,3})?|-?\d{4})(?:S\d{1,3})?[?~%]?$/;

/** Beyond these years a day number would no longer be an exact whole number. */
const MOST_YEAR = 24e12;

/**
 * The first and last day that a single EDTF date may mean; null where the text is none, and where it names
 * no day that exists (`1985-02-29`). Intervals, sets and times of day are not read here.
 *
 * The `edtf` package reads seasons and long years. A date of year, month and day is read here and held against
 * the calendar: the package takes 29 February of any year, refuses `2004-06-3X`, makes `1985-X2-30` day 29 and
 * takes no qualifier beside an unspecified digit or a season (`192X~`, `2001-21?`). The specification has the X
 * "anywhere within a component", and a qualifier on any date.
 *
 * A qualifier is a flag and widens nothing: how far "approximate" reaches is nowhere defined. A year of which
 * nothing is known (`XXXX`) is one of 0000 to 9999, as its four digits say.
 *
 * Source  Library of Congress, EDTF (4 February 2019)
 */
export function dateBounds(text: string): DateBounds | null {
  const [, year, month, day] = DATE.exec(text) ?? [];
  const span = year === undefined ? longYearSpan(text) : writtenSpan(year, month, day);
  return span && { ...span, uncertain: /[?%]/.test(text), approximate: /[~%]/.test(text) };
}

/** A date with a time of day lies on the day that is written: the local one, whatever the shift from UTC. */
export function dateAndTimeBounds(text: string): DateBounds | null {
  const [, date] = DATE_AND_TIME.exec(text) ?? [];
  return date !== undefined && treeOf(text) !== null ? dateBounds(date) : null;
}

type Span = Pick<DateBounds, "earliest" | "latest" | "precision">;

/** A year in one of the long forms: `Y170000002`, `Y-17E7`, `Y3388E2S3`, `1950S2`. */
function longYearSpan(text: string): Span | null {
  const tree = LONG_YEAR.test(text) ? treeOf(text.replace(/[?~%]$/, "")) : null;
  if (tree?.type !== "Year") return null;
  const year = Number(tree.values[0]);
  // The letter is for years of more than four digits only; the package lets Y0E5 pass.
  if (text.startsWith("Y") && Math.abs(year) <= 9999) return null;
  const [first, last] = significantYears(year, tree.significant ?? Infinity);
  if (Math.max(-first, last) > MOST_YEAR) return null;
  return { earliest: dayNumber(first, 1, 1), latest: dayNumber(last, 12, 31), precision: 1 };
}

function writtenSpan(year: string, month: string | undefined, day: string | undefined): Span | null {
  if (Number(month) > 20) {
    return day === undefined ? seasonSpan(`${year}-${month}`) : null;
  }
  const years = yearsOf(year);
  const months =
    month === undefined ? [1, 12] : fillings(month).filter((filling) => filling >= 1 && filling <= 12);
  const daysOf = (ofYear: number, ofMonth: number): number[] => {
    const most = daysInMonth(ofYear, ofMonth);
    return day === undefined ? [1, most] : fillings(day).filter((filling) => filling >= 1 && filling <= most);
  };
  const earliest = firstDay(years, months, (...of) => daysOf(...of)[0]);
  const latest = firstDay(years.toReversed(), months.toReversed(), (...of) => daysOf(...of).at(-1));
  // Whatever has a first day has a last one.
  if (earliest === null) return null;
  return { earliest, latest: latest as DayNumber, precision: [year, month, day].filter(Boolean).length };
}

function seasonSpan(text: string): Span | null {
  const tree = treeOf(text);
  if (tree?.type !== "Season") return null;
  const [year, code] = tree.values.map(Number) as [number, number];
  const [first, last] = subYearMonths(code);
  return {
    earliest: dayNumber(year, first, 1),
    latest: dayNumber(year, last, daysInMonth(year, last)),
    precision: 2,
  };
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

/** Every number that the digits may stand for, X being any digit; ascending. */
function fillings(digits: string): number[] {
  let numbers = [0];
  for (const digit of digits) {
    const choices = digit === "X" ? [...Array(10).keys()] : [Number(digit)];
    numbers = numbers.flatMap((number) => choices.map((choice) => 10 * number + choice));
  }
  return numbers;
}

function treeOf(text: string): ReturnType<typeof parse> | null {
  try {
    return parse(text);
  } catch {
    return null;
  }
}
