import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { classOf } from "../../shared/assessments/rarity/scale-class.ts";
import type { Scale } from "../../shared/records/register.ts";
import { english } from "../../shared/words/en/english.ts";
import { gapLength, isWorthTelling } from "../../shared/words/gap-length.ts";
import { shareBounds } from "../../shared/words/share-bounds.ts";

const { count, share, exactShare, estimate, wait, span, quantity } = english.numbers;

// The rules stand in shared/words/numbers.ts; the expected texts are rounded by hand.
describe("rounding for reading, all of it in one place", () => {
  it.each([
    [count, 26.14, "26"],
    [count, 44.5, "45"],
    [count, 2883.27, "2,883"],
    [count, 0, "0"],
    [count, 0.27, "under 1"],
    [count, 0.5, "1"],
    [share, 0, "0%"],
    [share, 1, "100%"],
    [share, 0.0001, "under 1%"],
    [share, 0.005, "1%"],
    [share, 0.9949, "99%"],
    [share, 0.9999, "over 99%"],
    [exactShare, 0.95, "95%"],
    [exactShare, 0.999, "99.9%"],
    [exactShare, 0.975, "97.5%"],
    [exactShare, 0.896343, "89.63%"],
    [estimate, 0, "0"],
    [estimate, 0.001, "under 0.01"],
    [estimate, 0.0618672, "0.06"],
    [estimate, 0.184539, "0.18"],
    [estimate, 16.919336, "17"],
    [estimate, 266.6, "270"],
    [estimate, 3192, "3,200"],
    [wait, 16.919336, "17"],
    [wait, 100, "100"],
    [wait, 266.6, "over 100"],
    [span, 4.02, "4"],
    [span, 41.3, "41"],
    [span, 132.4, "132"],
    [quantity, 45.5, "45.5"],
    [quantity, 4 + 1 / 3, "4.33"],
    [quantity, 12, "12"],
  ] as const)("%o of %d is %s", (write, value, written) => {
    expect(write(value)).toBe(written);
  });

  // The least is never written as more than it is, nor the most as less; without doubt there is one number, the nearest.
  it.each([
    [0.8963, 0.9634, "89%", "97%"],
    [0.806, 0.814, "80%", "82%"],
    [0.57, 0.58, "57%", "58%"],
    [0.7, 0.7 + Number.EPSILON, "70%", "70%"],
    [0, 1, "0%", "100%"],
    [0.009, 0.991, "under 1%", "over 99%"],
    [0.001, 0.004, "under 1%", "1%"],
    [0.996, 0.999, "99%", "over 99%"],
    [0.8963, 0.8963, "90%", null],
    [0.285, 0.285, "29%", null],
    [1, 1, "100%", null],
  ])("of a completeness of %d to %d are written %s and %s", (low, high, certain, possible) => {
    expect(shareBounds({ low, high }, english.numbers)).toEqual({ certain, possible });
  });

  it("writes a 0 for nothing but 0", () => {
    const positive = fc.double({ min: 0, max: 1e6, minExcluded: true, noNaN: true });
    fc.assert(
      fc.property(positive, (value) => {
        for (const write of [count, share, estimate]) expect(write(value)).toMatch(/[1-9]/);
      }),
    );
  });

  it("gives an estimate of years or of a rate no more than two figures, however large", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1e7, noNaN: true }), (value) => {
        const figures = estimate(value).replace(/[^0-9]/g, "");
        expect(figures.replace(/^0+/, "").replace(/0+$/, "").length).toBeLessThanOrEqual(2);
      }),
    );
  });

  it("never puts a larger number before a smaller", () => {
    const positive = fc.double({ min: 0, max: 1e6, noNaN: true });
    const read = (text: string) => Number(text.replace(/[,%]|over |under /g, ""));
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        for (const write of [count, share, estimate, wait, span, quantity])
          expect(read(write(low))).toBeLessThanOrEqual(read(write(high)));
      }),
    );
  });

  it("classes a number of examples as it is written", () => {
    const classes = Array.from({ length: 60 }, (_, at) => ({ id: String(at), low: at, high: at }));
    const scale = { classes } as unknown as Scale;
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 59.49, noNaN: true }), (value) => {
        expect(classOf(scale, value)).toBe(count(value));
      }),
    );
  });
});

describe("how long nothing is known", () => {
  const write = (years: number, longest: number | null) => {
    const length = gapLength({ years, longest }, english.numbers);
    return english.pages.item.gap("1987", "2004", length).replace(/^.*: /, "");
  };

  it.each<[number, number | null, string]>([
    [16.835, 17.835, "at least 16 years, at most 18."],
    [16.835, 16.835, "17 years."],
    [16.835, null, "at least 16 years."],
    [1.05, 1.19, "at least 1 year, at most 1.2."],
    [20, 21, "at least 20 years, at most 21."],
    [100.9, 101.1, "at least 100 years, at most 102."],
    [0.0027, 0.011, "at least 0 years, at most 0.02."],
  ])("is never said to be more or less than %s to %s", (years, longest, expected) => {
    expect(write(years, longest)).toBe(expected);
  });
});

// 2025-09-03 to 2025-11-15, the days of a sale, and from one New Year to the next but one.
it.each([
  [2025, 2025, 0.2, false],
  [2024, 2025, 0.01, false],
  [2024, 2025, 0.2, true],
  [2024, 2026, 1, true],
])("a gap from %d to %d of %d years is told of: %s", (from, to, years, told) => {
  expect(isWorthTelling({ from, to, years })).toBe(told);
});
