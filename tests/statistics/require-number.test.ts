import { describe, expect, it } from "vitest";
import { requireCount, requirePositive } from "../../shared/statistics/require-number.ts";

describe("requireCount", () => {
  it.each([
    [0, 0, undefined],
    [2, 2, 2],
    [3, 2, 4],
    [Number.MAX_SAFE_INTEGER, 0, undefined],
  ])("takes %d where it must lie from %d to %s", (value, least, most) => {
    expect(() => requireCount("trials", value, least, most)).not.toThrow();
  });

  it.each([
    [1, 2, undefined, "Found trials = 1; expected a whole number of at least 2."],
    [5, 2, 4, "Found trials = 5; expected a whole number from 2 to 4."],
    [1, 2, 4, "Found trials = 1; expected a whole number from 2 to 4."],
    [2.5, 2, 4, "Found trials = 2.5; expected a whole number from 2 to 4."],
    [Number.NaN, 0, undefined, "Found trials = NaN; expected a whole number of at least 0."],
    [Infinity, 0, undefined, "Found trials = Infinity; expected a whole number of at least 0."],
    [2 ** 53, 0, undefined, "Found trials = 9007199254740992; expected a whole number of at least 0."],
  ])("refuses %d where it must lie from %d to %s", (value, least, most, message) => {
    expect(() => requireCount("trials", value, least, most)).toThrow(new RangeError(message));
  });
});

describe("requirePositive", () => {
  it("takes what is finite and above 0", () => {
    expect(() => requirePositive("exposure", 5e-324)).not.toThrow();
    expect(() => requirePositive("exposure", 1e308)).not.toThrow();
  });

  it.each([0, -1, Infinity, Number.NaN])("refuses %d", (value) => {
    expect(() => requirePositive("exposure", value)).toThrow(
      new RangeError(`Found exposure = ${value}; expected a finite number above 0.`),
    );
  });
});
