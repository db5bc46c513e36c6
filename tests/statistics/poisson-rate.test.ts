import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { poissonRate } from "../../shared/statistics/poisson-rate.ts";
import { expectEstimate, expectSixDecimals } from "./close.ts";
import { reference } from "./reference.ts";

describe("poissonRate", () => {
  it.each([
    // Exact 95% limits for a count [R] [S].
    [0, 0, 3.688879],
    [1, 0.025318, 5.571643],
    [2, 0.242209, 7.224688],
    [3, 0.618672, 8.767273],
    [5, 1.623486, 11.668332],
    [10, 4.795389, 18.390356],
  ])("gives a count of %d its tabulated limits", (events, low, high) => {
    expectSixDecimals(poissonRate(events, 1, 0.95), events, low, high);
  });

  it("divides by the exposure", () => {
    expectSixDecimals(poissonRate(3, 12.5, 0.95), 0.24, 0.049494, 0.701382); // [R] [S]
    expectSixDecimals(poissonRate(0, 8, 0.95), 0, 0, 0.46111); // [R] [S]
  });

  it.each(reference.poisson)("agrees with R's poisson.test: $events in $exposure at $confidence", (row) => {
    expectEstimate(poissonRate(row.events, row.exposure, row.confidence), row, 1e-9);
  });

  it("keeps alpha/2 for a count of 0: 3.689, not the one-sided 2.996", () => {
    expect(poissonRate(0, 1, 0.95).high).toBeCloseTo(-Math.log(0.025), 12);
  });

  it("covers: the chance of k or more at low, and of k or fewer at high, is alpha/2", () => {
    const atMost = (count: number, mean: number): number => {
      let term = Math.exp(-mean);
      let sum = term;
      for (let index = 1; index <= count; index++) {
        term *= mean / index;
        sum += term;
      }
      return sum;
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60 }),
        fc.constantFrom(0.8, 0.9, 0.95, 0.99),
        (events, confidence) => {
          const { value, low, high } = poissonRate(events, 1, confidence);
          const tail = (1 - confidence) / 2;
          expect(atMost(events, high)).toBeCloseTo(tail, 9);
          if (events > 0) expect(1 - atMost(events - 1, low)).toBeCloseTo(tail, 9);
          expect(low).toBeLessThanOrEqual(value);
          expect(high).toBeGreaterThan(value);
        },
      ),
    );
  });

  it.each([
    [-1, 1, "events"],
    [1.5, 1, "events"],
    [1, 0, "exposure"],
    [1, -3, "exposure"],
  ])("refuses %d events in %d", (events, exposure, name) => {
    expect(() => poissonRate(events, exposure, 0.95)).toThrow(RangeError);
    expect(() => poissonRate(events, exposure, 0.95)).toThrow(name);
  });
});
