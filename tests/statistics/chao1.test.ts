import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chao1 } from "../../shared/statistics/chao1.ts";
import { logNormalInterval } from "../../shared/statistics/log-normal-interval.ts";
import { twoSidedZ } from "../../shared/statistics/normal-quantile.ts";
import { expectClose, expectSixDecimals } from "./close.ts";
import { reference } from "./reference.ts";

describe("chao1", () => {
  it.each([
    // Barro Colorado Island, plots 1, 3 and 5: vegan 2.6-4 and the EstimateS form of the variance [R].
    [93, 31, 18, 448, 117.473684, 103.137806, 152.081937],
    [90, 37, 12, 463, 141.230769, 112.115772, 208.67511],
    [101, 36, 17, 505, 136, 116.293398, 181.099922],
  ])(
    "of %d examples, %d once and %d twice, is as published",
    (distinct, once, twice, sightings, value, low, high) => {
      expectSixDecimals(chao1({ distinct, once, twice, sightings }, 0.95), value, low, high);
    },
  );

  it.each(reference.chao1)(
    "agrees with vegan's estimateR: $distinct seen, $once once, $twice twice, of $sightings",
    ({ distinct, once, twice, sightings, value }) => {
      expectClose(chao1({ distinct, once, twice, sightings }, 0.95).value, value);
    },
  );

  it("has a standard error near vegan's, which differs in its third term", () => {
    const rows = reference.chao1.filter(({ once, twice }) => once > 4 && twice > 2);
    expect(rows.length).toBeGreaterThan(50);
    for (const { distinct, once, twice, sightings, value, se } of rows) {
      const { high } = chao1({ distinct, once, twice, sightings }, 0.95);
      const logFactor = Math.log((high - distinct) / (value - distinct)) / twoSidedZ(0.95);
      const own = (value - distinct) * Math.sqrt(Math.expm1(logFactor ** 2));
      expectClose(own, se, 0.02);
    }
  });

  it("is the bias-corrected form, 39.2 for the girdled spiders and not the classic 43.893", () => {
    expect(chao1({ distinct: 26, once: 12, twice: 4, sightings: 168 }, 0.95).value).toBeCloseTo(39.2, 12); // [R]
  });

  it("takes its own variance where none was seen twice, by hand: D = 6, f1 = 4, n = 12", () => {
    // S = 6 + 4·3/2 = 12; variance 4·3/2 + 4·7²/4 - 4⁴/(4·12) = 6 + 49 - 16/3 = 149/3.
    const found = chao1({ distinct: 6, once: 4, twice: 0, sightings: 12 }, 0.95);
    const factor = Math.exp(1.959963984540054 * Math.sqrt(Math.log(1 + 149 / 3 / 36)));
    expectSixDecimals(found, 12, 6 + 6 / factor, 6 + 6 * factor);
  });

  it("takes the other variance as soon as one was seen twice, by hand: D = 6, f1 = 3, f2 = 1, n = 11", () => {
    // S = 6 + 3·2/4 = 7.5; variance 3·2/4 + 3·5²/16 + 3²·2²/(4·2⁴) = 1.5 + 4.6875 + 0.5625 = 6.75.
    const found = chao1({ distinct: 6, once: 3, twice: 1, sightings: 11 }, 0.95);
    const factor = Math.exp(1.959963984540054 * Math.sqrt(Math.log(1 + 6.75 / 1.5 ** 2)));
    expectSixDecimals(found, 7.5, 6 + 1.5 / factor, 6 + 1.5 * factor);
  });

  it.each([
    // f1 < 2: D itself, high (D + z√(D·P(1 - P)))/(1 - P) with P = e^(-n/D); by hand with z = 1.959963984540054.
    [5, 0, 5, 10],
    [5, 1, 0, 13],
    [1, 0, 1, 2],
  ])(
    "has no unseen where %d are seen, %d of them once: only the upper end is open",
    (distinct, once, twice, sightings) => {
      const p = Math.exp(-sightings / distinct);
      const high = (distinct + 1.959963984540054 * Math.sqrt(distinct * p * (1 - p))) / (1 - p);
      const found = chao1({ distinct, once, twice, sightings }, 0.95);
      expect(found.value).toBe(distinct);
      expect(found.low).toBe(distinct);
      expectClose(found.high, high);
      expect(found.high).toBeGreaterThan(distinct);
    },
  );

  it("gives a number even where every example was seen once", () => {
    // S = 9 + 9·8/2 = 45; whether it is shown is for the figure to decide.
    const found = chao1({ distinct: 9, once: 9, twice: 0, sightings: 9 }, 0.95);
    expect(found.value).toBe(45);
    expect(found.low).toBeGreaterThan(9);
  });

  it("holds its value, never ends below what was seen, and widens with the confidence", () => {
    fc.assert(
      fc.property(fc.nat(60), fc.nat(40), fc.nat(40), fc.nat(500), (once, twice, beyond, extra) => {
        const distinct = once + twice + beyond;
        fc.pre(distinct > 0);
        const sightings = once + 2 * twice + 3 * beyond + (beyond > 0 ? extra : 0);
        const found = chao1({ distinct, once, twice, sightings }, 0.9);
        expect(found.low).toBeGreaterThanOrEqual(distinct);
        expect(found.low).toBeLessThanOrEqual(found.value);
        expect(found.high).toBeGreaterThanOrEqual(found.value);
        expect(chao1({ distinct, once, twice, sightings }, 0.99).high).toBeGreaterThanOrEqual(found.high);
      }),
    );
  });

  it.each([
    [0, 0, 0, 0, "sightings"],
    [5, 6, 0, 6, "distinct"],
    [3, 1, 1, 3, "distinct"], // one once and one twice are two examples
    [2, 1, 1, 6, "distinct"], // the other three sightings are of some example
    [4, 1, 1, 6, "distinct"], // which makes three, not four
    [4, 1, 1, 7, "distinct"], // nor are four sightings two examples seen three times
    [5, 2, 3, 7, "twice"],
  ])("refuses D = %d, f1 = %d, f2 = %d, n = %d", (distinct, once, twice, sightings, name) => {
    expect(() => chao1({ distinct, once, twice, sightings }, 0.95)).toThrow(RangeError);
    expect(() => chao1({ distinct, once, twice, sightings }, 0.95)).toThrow(name);
  });

  it("takes counts that just agree", () => {
    expect(chao1({ distinct: 2, once: 1, twice: 1, sightings: 3 }, 0.95).value).toBe(2);
    expect(chao1({ distinct: 3, once: 1, twice: 1, sightings: 6 }, 0.95).value).toBe(3);
    expect(chao1({ distinct: 3, once: 1, twice: 1, sightings: 8 }, 0.95).value).toBe(3);
    expect(chao1({ distinct: 4, once: 1, twice: 1, sightings: 9 }, 0.95).value).toBe(4);
  });
});

describe("logNormalInterval", () => {
  it("is symmetric about the unseen on the scale of ratios", () => {
    const { low, high } = logNormalInterval(20, 8, 35, 0.95);
    expect(((low - 20) * (high - 20)) / 64).toBeCloseTo(1, 12);
  });
});
