import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wilson } from "../../shared/statistics/wilson.ts";
import { expectEstimate, expectSixDecimals } from "./close.ts";
import { reference } from "./reference.ts";

const trialsAndSuccesses = fc
  .integer({ min: 1, max: 5000 })
  .chain((trials) => fc.tuple(fc.constant(trials), fc.integer({ min: 0, max: trials })));
const confidence = fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000);

describe("wilson", () => {
  it.each([
    // Newcombe 1998, Table I, method 3: .2553 to .3662 and 0 to .1611 [P]; further digits [R] [S].
    [81, 263, 0.307985, 0.255289, 0.36621],
    [0, 20, 0, 0, 0.161125],
    [5, 10, 0.5, 0.236593, 0.763407], // [R] [S]
    [5, 25, 0.2, 0.088606, 0.39131], // [R] [S]
    [10, 10, 1, 0.722467, 1], // [R] [S]
    // Fifteen recorded examples, those at least as complete as 10 and as 12 parts [C].
    [6, 15, 0.4, 0.198245, 0.642532],
    [2, 15, 0.133333, 0.037361, 0.37882],
  ])("gives %d of %d its published interval", (successes, trials, value, low, high) => {
    expectSixDecimals(wilson(successes, trials, 0.95), value, low, high);
  });

  it.each(reference.wilson)("agrees with R's prop.test: $successes/$trials at $confidence", (row) => {
    expectEstimate(wilson(row.successes, row.trials, row.confidence), row, 1e-8);
  });

  it("holds its value, and keeps within 0 and 1, exactly so at the edges", () => {
    fc.assert(
      fc.property(trialsAndSuccesses, confidence, ([trials, successes], level) => {
        const { value, low, high } = wilson(successes, trials, level);
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
        expect(low === 0).toBe(successes === 0);
        expect(high === 1).toBe(successes === trials);
        expect(value).toBe(successes / trials);
      }),
    );
  });

  it("ends at exactly 1 where rounding would pass it", () => {
    for (let trials = 1; trials <= 300; trials++) {
      expect(wilson(trials, trials, 0.8).high).toBe(1);
      expect(wilson(0, trials, 0.8).low).toBe(0);
    }
  });

  it("mirrors itself: what has it and what has it not", () => {
    fc.assert(
      fc.property(trialsAndSuccesses, confidence, ([trials, successes], level) => {
        const some = wilson(successes, trials, level);
        const others = wilson(trials - successes, trials, level);
        expect(some.low).toBeCloseTo(1 - others.high, 12);
        expect(some.high).toBeCloseTo(1 - others.low, 12);
      }),
    );
  });

  it("rises with every success and widens with the confidence", () => {
    fc.assert(
      fc.property(trialsAndSuccesses, ([trials, successes]) => {
        fc.pre(successes < trials);
        expect(wilson(successes + 1, trials, 0.95).low).toBeGreaterThan(wilson(successes, trials, 0.95).low);
        expect(wilson(successes + 1, trials, 0.95).high).toBeGreaterThan(
          wilson(successes, trials, 0.95).high,
        );
        expect(wilson(successes, trials, 0.99).high).toBeGreaterThan(wilson(successes, trials, 0.9).high);
      }),
    );
  });

  it("gives no estimate without trials", () => {
    expect(() => wilson(0, 0, 0.95)).toThrow(
      new RangeError("Found trials = 0; expected a whole number of at least 1."),
    );
  });

  it.each([
    [-1, 5],
    [6, 5],
    [1.5, 5],
  ])("refuses %d successes of %d", (successes, trials) => {
    expect(() => wilson(successes, trials, 0.95)).toThrow("successes");
  });
});
