import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantile, quartiles } from "../../shared/statistics/quantile.ts";
import { reference } from "./reference.ts";

/** Without a negative zero, which is no other number. */
const finite = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((value) => value + 0);

describe("quantile", () => {
  it.each(reference.quantiles)("agrees with R's type 7 for $values", ({ values, p, quantiles }) => {
    expect(quantiles).toHaveLength(8);
    p.forEach((share, index) => {
      expect(quantile(values, share)).toBeCloseTo(quantiles[index] as number, 9);
    });
  });

  it("needs no order, and leaves the order that it was given", () => {
    fc.assert(
      fc.property(
        fc.array(finite, { minLength: 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (values, p) => {
          const before = [...values];
          expect(quantile(values, p)).toBe(quantile(values.toReversed(), p));
          expect(values).toEqual(before);
        },
      ),
    );
  });

  it("rises with p, from the smallest to the largest", () => {
    fc.assert(
      fc.property(
        fc.array(finite, { minLength: 1 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (values, p) => {
          expect(quantile(values, 0)).toBe(Math.min(...values));
          expect(quantile(values, 1)).toBe(Math.max(...values));
          expect(quantile(values, p)).toBeLessThanOrEqual(quantile(values, p + 0.5));
        },
      ),
    );
  });

  it("refuses no values, other than finite ones, and a p outside 0 to 1", () => {
    expect(() => quantile([], 0.5)).toThrow(new RangeError("Found no values; expected at least one."));
    expect(() => quantile([1, Number.NaN], 0.5)).toThrow(
      new RangeError("Found NaN among the values; expected finite numbers."),
    );
    expect(() => quantile([Infinity], 0.5)).toThrow(RangeError);
    for (const p of [-0.01, 1.01, Number.NaN]) {
      expect(() => quantile([1], p)).toThrow(
        new RangeError(`Found p = ${p}; expected a number from 0 to 1.`),
      );
    }
  });
});

describe("quartiles", () => {
  it("are 7.25, 9 and 14.5 of the series that d3-array tests its R-7 method with", () => {
    expect(quartiles([20, 3, 6, 7, 8, 8, 10, 13, 15, 16])).toEqual({ lower: 7.25, median: 9, upper: 14.5 });
  });

  it("of one value are that value", () => {
    expect(quartiles([42])).toEqual({ lower: 42, median: 42, upper: 42 });
  });
});
