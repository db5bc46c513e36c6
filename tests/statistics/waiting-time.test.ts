import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { waitingTime } from "../../shared/statistics/waiting-time.ts";
import { expectEstimate, expectSixDecimals } from "./close.ts";
import { reference } from "./reference.ts";

describe("waitingTime", () => {
  it("has the tabulated median and 5% and 95% quantiles", () => {
    // k = 3, T = 12.5 and k = 0, T = 8 [R] [S].
    expectSixDecimals(waitingTime(3, 12.5, 0.9), 2.737671, 0.184539, 16.919336);
    expect(waitingTime(0, 8, 0.9).value).toBeCloseTo(24, 12);
    expect(waitingTime(0, 8, 0.9).high).toBeCloseTo(3192, 8);
  });

  it.each([
    // P(W <= 1) and P(W <= 5) [R] [S], read backwards: the quantile of that probability is 1 or 5.
    [3, 12.5, 0.236135, 1],
    [3, 12.5, 0.691999, 5],
    [0, 8, 0.057191, 1],
    [0, 8, 0.215535, 5],
  ])("k = %d, T = %d: a share of %d waits no longer than %d", (events, exposure, share, wait) => {
    const { low, high } = waitingTime(events, exposure, Math.abs(1 - 2 * share));
    expect(Math.abs((share < 0.5 ? low : high) - wait)).toBeLessThan(0.0001);
  });

  it.each(reference.waiting)("agrees with R's F distribution: $events in $exposure at $confidence", (row) => {
    expectEstimate(waitingTime(row.events, row.exposure, row.confidence), row, 1e-9);
  });

  it("puts half of the wait below the median, and alpha/2 beyond each end", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 500 }),
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        (events, exposure) => {
          const { value, low, high } = waitingTime(events, exposure, 0.95);
          const longer = (wait: number) => (exposure / (exposure + wait)) ** (events + 0.5);
          expect(longer(value)).toBeCloseTo(0.5, 9);
          expect(longer(low)).toBeCloseTo(0.975, 9);
          expect(longer(high)).toBeCloseTo(0.025, 9);
        },
      ),
    );
  });

  it.each([
    [-1, 1, "events"],
    [0.5, 1, "events"],
    [1, 0, "exposure"],
    [1, Infinity, "exposure"],
  ])("refuses %d events in %d", (events, exposure, name) => {
    expect(() => waitingTime(events, exposure, 0.95)).toThrow(RangeError);
    expect(() => waitingTime(events, exposure, 0.95)).toThrow(name);
  });
});
