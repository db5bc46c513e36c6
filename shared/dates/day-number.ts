/**
 * Days of the proleptic Gregorian calendar as whole numbers: 0 is 1970-01-01, and year 0 is the year before
 * year 1, as in ISO 8601. Plain arithmetic on numbers, since JavaScript's Date ends at the year 275760.
 */
export type DayNumber = number;

const DAYS_IN_400_YEARS = 146_097;
const DAYS_BEFORE_1970 = 719_468; // from 0000-03-01, where the arithmetic begins its years

/**
 * The number of a calendar day; month 1 to 12, or 13 for the January after; day 1 to 31.
 * Formula  years begin on 1 March, so that the leap day is the last: 365y + ⌊y/4⌋ - ⌊y/100⌋ + ⌊y/400⌋
 *          + ⌊(153m + 2)/5⌋ + d - 1, with m counted from March as 0
 * Source   the day counts of Fliegel & Van Flandern (1968), Communications of the ACM 11: 657, from 1 March
 * Checks   dayNumber(1970, 1, 1) => 0    dayNumber(2000, 3, 1) => 11017    dayNumber(0, 1, 1) => -719528
 */
export function dayNumber(year: number, month: number, day: number): DayNumber {
  const fromMarch = (month + 9) % 12;
  const marchYear = month < 3 ? year - 1 : year;
  return daysBeforeMarch(marchYear) + Math.floor((153 * fromMarch + 2) / 5) + day - 1 - DAYS_BEFORE_1970;
}

/**
 * The calendar year that a day lies in.
 * Checks   yearOf(0) => 1970    yearOf(-1) => 1969    yearOf(-719529) => -1
 */
export function yearOf(day: DayNumber): number {
  // Counted from March, the mean year is right or one too early; the year's own last day settles it.
  const guess = Math.floor(((day + DAYS_BEFORE_1970) * 400) / DAYS_IN_400_YEARS);
  return day > dayNumber(guess, 12, 31) ? guess + 1 : guess;
}

/**
 * How many days a month has; month 1 to 12.
 * Checks   daysInMonth(1900, 2) => 28    daysInMonth(2000, 2) => 29    daysInMonth(1985, 4) => 30
 */
export function daysInMonth(year: number, month: number): number {
  return dayNumber(year, month + 1, 1) - dayNumber(year, month, 1);
}

function daysBeforeMarch(year: number): number {
  return 365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);
}
