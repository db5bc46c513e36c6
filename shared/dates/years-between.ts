import { type DayNumber, dayNumber, yearOf } from "./day-number.ts";

/**
 * How many years lie between the mornings of two days, of which the second is not the earlier.
 * Formula  the whole years up to the last anniversary of the first day, and the share that has passed of the days from
 *          there to the next one; 29 February has its anniversaries on 1 March
 * Source   the ECMAScript proposal Temporal, Duration.prototype.total in years, relative to a date
 * Checks   yearsBetween(0, 365) => 1    yearsBetween(0, 1096) => 3    yearsBetween(730, 913) => 0.5
 */
export function yearsBetween(from: DayNumber, to: DayNumber): number {
  // Years from March to March have every day at the same place, the leap day last.
  const begun = yearFromMarch(from);
  const anniversary = (years: number): DayNumber =>
    from - dayNumber(begun, 3, 1) + dayNumber(begun + years, 3, 1);
  const most = yearFromMarch(to) - begun;
  const whole = anniversary(most) > to ? most - 1 : most;
  const last = anniversary(whole);
  return whole + (to - last) / (anniversary(whole + 1) - last);
}

function yearFromMarch(day: DayNumber): number {
  const year = yearOf(day);
  return day < dayNumber(year, 3, 1) ? year - 1 : year;
}
