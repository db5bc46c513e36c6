import { expect } from "vitest";
import type { Estimate, Interval } from "../../shared/statistics/interval.ts";

/** Agreement to a relative tolerance; with an expected 0 it has to be 0. */
export function expectClose(found: number, expected: number, relative = 1e-9): void {
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(
    relative * Math.abs(expected),
  );
}

export function expectInterval(found: Interval, low: number, high: number, relative = 1e-9): void {
  expectClose(found.low, low, relative);
  expectClose(found.high, high, relative);
}

export function expectEstimate(found: Estimate, expected: Estimate, relative = 1e-9): void {
  expectClose(found.value, expected.value, relative);
  expectInterval(found, expected.low, expected.high, relative);
}

/** Values published or recorded to six decimals. */
export function expectSixDecimals(found: Estimate, value: number, low: number, high: number): void {
  expect(found.value).toBeCloseTo(value, 6);
  expect(found.low).toBeCloseTo(low, 6);
  expect(found.high).toBeCloseTo(high, 6);
}
