import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chapman } from "../../shared/statistics/chapman.ts";
import { expectSixDecimals } from "./close.ts";

describe("chapman", () => {
  it.each([
    // Chapman with Seber's variance and the log-normal interval [R]; 100/100/20: documented example input [P].
    [10, 15, 5, 28.333333, 22.385262, 49.113973],
    [100, 100, 20, 484.761905, 361.485017, 691.776785],
    [30, 22, 0, 712, 234.034785, 2444.949242],
  ])("of lists of %d and %d that share %d is as published", (first, second, both, value, low, high) => {
    expectSixDecimals(chapman({ first, second, both }, 0.95), value, low, high);
    expectSixDecimals(chapman({ first: second, second: first, both }, 0.95), value, low, high);
  });

  it.each([
    [4, 9, 4, 9],
    [9, 4, 4, 9],
    [6, 6, 6, 6],
    [1, 1, 1, 1],
  ])(
    "where one list of %d and %d holds the other (%d shared), has nothing unseen",
    (first, second, both, seen) => {
      expect(chapman({ first, second, both }, 0.95)).toEqual({ value: seen, low: seen, high: seen });
    },
  );

  it("is (n1 + 1)(n2 + 1)/(m + 1) - 1, holds its value and never ends below what was seen", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 300 }),
        fc.nat(300),
        (first, second, overlap) => {
          const both = Math.min(first, second, overlap);
          const found = chapman({ first, second, both }, 0.9);
          expect(found.value).toBeCloseTo(((first + 1) * (second + 1)) / (both + 1) - 1, 8);
          expect(found.low).toBeGreaterThanOrEqual(first + second - both);
          expect(found.low).toBeLessThanOrEqual(found.value);
          expect(found.high).toBeGreaterThanOrEqual(found.value);
          expect(chapman({ first, second, both }, 0.99).high).toBeGreaterThanOrEqual(found.high);
        },
      ),
    );
  });

  it.each([
    [0, 5, 0, "first"],
    [5, 0, 0, "second"],
    [5, 4, 5, "both"],
    [4, 5, 5, "both"],
    [5, 5, -1, "both"],
    [5.5, 5, 1, "first"],
  ])("refuses lists of %d and %d that share %d", (first, second, both, name) => {
    expect(() => chapman({ first, second, both }, 0.95)).toThrow(RangeError);
    expect(() => chapman({ first, second, both }, 0.95)).toThrow(name);
  });
});
