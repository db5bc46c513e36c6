import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverage } from "../../shared/statistics/coverage.ts";

describe("coverage", () => {
  it.each([
    // Barro Colorado Island, plots 1, 3 and 5 of vegan's BCI; Chao & Jost's form as in iNEXT 3.0.2 [R].
    [448, 31, 18, 0.930983],
    [463, 37, 12, 0.920198],
    [505, 36, 17, 0.928846],
  ])("of %d sightings, %d once and %d twice, is as published", (sightings, once, twice, expected) => {
    expect(coverage({ sightings, once, twice })).toBeCloseTo(expected, 6);
  });

  it("of the girdled spider sample is the 0.9289 that iNEXT prints", () => {
    expect(Math.abs(coverage({ sightings: 168, once: 12, twice: 4 }) - 0.9289)).toBeLessThanOrEqual(0.00005); // [P]
  });

  it.each([
    // The second form, by hand.
    [10, 4, 0, 1 - (4 / 10) * (27 / 29)],
    [3, 3, 0, 1 - 4 / 6],
    [10, 1, 0, 1],
    [1, 1, 0, 1],
    [10, 0, 0, 1],
    [10, 0, 5, 1],
    [3, 0, 0, 1],
  ])(
    "takes the other form where none was seen twice: n = %d, f1 = %d, f2 = %d",
    (sightings, once, twice, expected) => {
      expect(coverage({ sightings, once, twice })).toBeCloseTo(expected, 15);
    },
  );

  it("takes the first form as soon as one was seen twice: 1 - (1/3)(2/4) = 5/6", () => {
    expect(coverage({ sightings: 3, once: 1, twice: 1 })).toBeCloseTo(5 / 6, 15);
  });

  it("lies between 0 and 1 and never below Good's 1 - f1/n", () => {
    fc.assert(
      fc.property(fc.nat(500), fc.nat(200), fc.nat(900), (once, twice, more) => {
        const sightings = once + 2 * twice + more;
        fc.pre(sightings > 0);
        const found = coverage({ sightings, once, twice });
        expect(found).toBeLessThanOrEqual(1);
        expect(found).toBeGreaterThanOrEqual(1 - once / sightings);
      }),
    );
  });

  it.each([
    [0, 0, 0, "sightings"],
    [5, 6, 0, "once"],
    [5, -1, 0, "once"],
    [5, 2, 2, "twice"],
    [5, 2, -1, "twice"],
    [5.5, 2, 1, "sightings"],
  ])("refuses n = %d, f1 = %d, f2 = %d", (sightings, once, twice, name) => {
    expect(() => coverage({ sightings, once, twice })).toThrow(RangeError);
    expect(() => coverage({ sightings, once, twice })).toThrow(name);
  });

  it("takes counts that just agree", () => {
    expect(() => coverage({ sightings: 5, once: 1, twice: 2 })).not.toThrow();
    expect(() => coverage({ sightings: 5, once: 5, twice: 0 })).not.toThrow();
  });
});
