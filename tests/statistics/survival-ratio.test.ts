import { describe, expect, it } from "vitest";
import { survivalRatio } from "../../shared/statistics/survival-ratio.ts";

const certain = (count: number) => ({ value: count, low: count, high: count });

describe("survivalRatio", () => {
  it("divides end by opposite end", () => {
    expect(survivalRatio({ value: 30, low: 20, high: 60 }, { value: 120, low: 100, high: 160 })).toEqual({
      value: 0.25,
      low: 0.125,
      high: 0.6,
    });
  });

  it("takes a documented count as its own ends", () => {
    expect(survivalRatio({ value: 103, low: 82.4, high: 206 }, certain(412))).toEqual({
      value: 0.25,
      low: 0.2,
      high: 0.5,
    });
  });

  it("ends at 1", () => {
    expect(survivalRatio({ value: 90, low: 50, high: 300 }, { value: 100, low: 80, high: 200 }).high).toBe(1);
    expect(survivalRatio(certain(100), certain(100))).toEqual({ value: 1, low: 1, high: 1 });
    expect(survivalRatio(certain(0), certain(100))).toEqual({ value: 0, low: 0, high: 0 });
  });

  it("is no share where more survive than were made", () => {
    expect(() => survivalRatio(certain(101), certain(100))).toThrow(
      new RangeError("Found survivors = 101; expected no more than made = 100."),
    );
    expect(() => survivalRatio({ ...certain(1), value: Number.NaN }, certain(100))).toThrow(RangeError);
  });

  it("refuses a total that may be nothing, and fewer than no survivors", () => {
    expect(() => survivalRatio(certain(0), { value: 5, low: 0, high: 9 })).toThrow("made.low");
    expect(() => survivalRatio({ value: 1, low: -1, high: 2 }, certain(9))).toThrow(
      new RangeError("Found survivors.low = -1; expected at least 0."),
    );
  });
});
