import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber, daysInMonth, yearOf } from "../../shared/dates/day-number.ts";
import { reference } from "../statistics/reference.ts";

const MILLISECONDS = 86_400_000;

/** The platform's own proleptic Gregorian calendar, for the years that it reaches. */
function platformDay(year: number, month: number, day: number): number {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  return date.getTime() / MILLISECONDS;
}

describe("dayNumber", () => {
  it.each(reference.days)("agrees with R's as.Date: $date", ({ date, day }) => {
    const [year, month, dayOfMonth] = date.split("-").map(Number) as [number, number, number];
    expect(dayNumber(year, month, dayOfMonth)).toBe(day);
  });

  it("agrees with the platform's calendar wherever that reaches", () => {
    const anyDay = fc.tuple(
      fc.integer({ min: -270_000, max: 270_000 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 28 }),
    );
    fc.assert(
      fc.property(anyDay, ([year, month, day]) => {
        expect(dayNumber(year, month, day)).toBe(platformDay(year, month, day));
      }),
      { numRuns: 2000 },
    );
  });

  it("counts 146097 days to every 400 years, far beyond the platform's calendar", () => {
    for (const cycles of [1, 425_005, -425_005, 50_000_000_000]) {
      expect(dayNumber(2000 + 400 * cycles, 2, 29)).toBe(11_016 + 146_097 * cycles);
    }
  });

  it("goes on by one from each day to the next, through leap years and centuries", () => {
    let expected = dayNumber(1895, 1, 1);
    for (let year = 1895; year <= 2105; year++) {
      for (let month = 1; month <= 12; month++) {
        for (let day = 1; day <= daysInMonth(year, month); day++)
          expect(dayNumber(year, month, day)).toBe(expected++);
      }
    }
    expect(expected).toBe(platformDay(2106, 1, 1));
  });
});

describe("yearOf", () => {
  it("is the year of every day that begins or ends one", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (year) => {
        expect(yearOf(dayNumber(year, 1, 1))).toBe(year);
        expect(yearOf(dayNumber(year, 12, 31))).toBe(year);
        expect(yearOf(dayNumber(year, 1, 1) - 1)).toBe(year - 1);
      }),
      { numRuns: 2000 },
    );
  });

  it("agrees with the platform for every day between", () => {
    fc.assert(
      fc.property(fc.integer({ min: -90_000_000, max: 90_000_000 }), (day) => {
        expect(yearOf(day)).toBe(new Date(day * MILLISECONDS).getUTCFullYear());
      }),
      { numRuns: 2000 },
    );
  });

  it("holds at the last years that a day number can count exactly", () => {
    for (const year of [24e12, -24e12]) {
      expect(yearOf(dayNumber(year, 1, 1))).toBe(year);
      expect(yearOf(dayNumber(year, 12, 31))).toBe(year);
    }
  });
});

describe("daysInMonth", () => {
  it.each([
    // The Gregorian rule of leap years: by 4, not by 100, but by 400.
    [2024, 2, 29],
    [2023, 2, 28],
    [1900, 2, 28],
    [2000, 2, 29],
    [0, 2, 29],
    [-4, 2, 29],
    [-100, 2, 28],
    [2023, 12, 31],
    [2023, 11, 30],
    [2023, 1, 31],
  ])("of year %d, month %d, is %d", (year, month, days) => {
    expect(daysInMonth(year, month)).toBe(days);
  });
});
