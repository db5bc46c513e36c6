import { describe, expect, it } from "vitest";
import { alpha, alphaFraction } from "../../shared/statistics/alpha.ts";

describe("alpha", () => {
  it.each([
    // Decimal arithmetic by hand: 1 - 0.95 is 5/100, which it is not in floating point.
    [0.95, 5n, 100n],
    [0.9, 1n, 10n],
    [0.999, 1n, 1000n],
    [0.123456789, 876543211n, 1000000000n],
    [5e-7, 9999995n, 10000000n],
    [1.25e-8, 9999999875n, 10000000000n],
  ])("is the exact decimal complement of %d", (confidence, numerator, denominator) => {
    expect(alphaFraction(confidence)).toEqual({ numerator, denominator });
  });

  it("is the nearest number to the fraction, not the floating-point difference", () => {
    expect(alpha(0.95)).toBe(0.05);
    expect(1 - 0.95).not.toBe(0.05);
    expect(alpha(0.99)).toBe(0.01);
  });

  it.each([0, 1, -0.5, 1.5, Number.NaN, Infinity])("refuses a confidence of %d", (confidence) => {
    expect(() => alphaFraction(confidence)).toThrow(RangeError);
    expect(() => alpha(confidence)).toThrow(
      `Found confidence = ${confidence}; expected a number between 0 and 1`,
    );
  });
});
