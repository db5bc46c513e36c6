import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { serialTotal, serialTotalUnknownStart } from "../../shared/statistics/serial-total.ts";
import { expectClose } from "./close.ts";
import { reference } from "./reference.ts";

/** Goodman 1954, Some Practical Techniques in Serial Number Analysis: 31 serials [P]. */
const GOODMAN = [
  83, 135, 274, 380, 668, 895, 955, 964, 1113, 1174, 1210, 1344, 1387, 1414, 1610, 1668, 1689, 1756, 1865,
  1874, 1880, 1936, 2005, 2006, 2065, 2157, 2220, 2224, 2396, 2543, 2787,
];

/** Every sample of `size` of the numbers 1 to `total`, ascending. */
function* samples(total: number, size: number, from = 1): Generator<number[]> {
  if (size === 0) yield [];
  else
    for (let first = from; first <= total; first++)
      for (const rest of samples(total, size - 1, first + 1)) yield [first, ...rest];
}

const choose = (n: bigint, k: bigint): bigint => {
  let result = 1n;
  for (let index = 0n; index < k; index++) result = (result * (n - index)) / (index + 1n);
  return result;
};

describe("serialTotal", () => {
  it.each([
    // The textbook sample 2, 6, 7, 14: 16.5 [P]; one-sided upper ends [R] [S].
    [4, 14, 16.5, 27],
    [4, 60, 74, 125],
    [5, 525, 629, 954],
    [31, 2787, 2875.903226, 3068],
  ])("gives %d serials up to %d their published total", (distinct, largest, value, high) => {
    const total = serialTotal({ distinct, largest }, 0.95);
    expect(total.value).toBeCloseTo(value, 6);
    expect(total.low).toBe(largest);
    expect(total.high).toBe(high);
  });

  it.each([
    // C(m,k)/C(N,k) equals alpha exactly, counted by hand: such an N is kept.
    [2, 6, 0.95, 25], // 15/300 = 1/20
    [2, 4, 0.95, 16], // 6/120 = 1/20
    [3, 3, 0.95, 6], // 1/20
    [2, 7, 0.9, 21], // 21/210 = 1/10
    [3, 78, 0.95, 210], // 76076/1521520 = 1/20
    [2, 3, 0.99, 25], // 3/300 = 1/100
  ])("keeps a tie: %d serials up to %d at %d reach %d", (distinct, largest, confidence, high) => {
    expect(serialTotal({ distinct, largest }, confidence).high).toBe(high);
  });

  it.each(reference.serial)(
    "agrees with exact fractions in R: $distinct up to $largest at $confidence",
    (row) => {
      const total = serialTotal({ distinct: row.distinct, largest: row.largest }, row.confidence);
      expectClose(total.value, row.value);
      expect(total.low).toBe(row.low);
      expect(total.high).toBe(row.high);
    },
  );

  it("is right on average, over all C(20,4) = 4845 samples of 20, and its upper end misses at most 1 in 20", () => {
    // Enumeration: mean 20, variance 14, mean of m(m - k)/k² = 14 [R].
    let count = 0;
    let sum = 0;
    let squares = 0;
    let missed = 0;
    for (const sample of samples(20, 4)) {
      const { value, high } = serialTotal({ distinct: 4, largest: sample[3] as number }, 0.95);
      count += 1;
      sum += value;
      squares += (value - 20) ** 2;
      if (high < 20) missed += 1;
    }
    expect(count).toBe(4845);
    expect(sum / count).toBeCloseTo(20, 9);
    expect(squares / count).toBeCloseTo(14, 9);
    expect(missed / count).toBeLessThanOrEqual(0.05);
    expect(missed).toBeGreaterThan(0);
  });

  it("ends at the last total that the condition holds for, in whole numbers", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 25 }), fc.integer({ min: 0, max: 400 }), (distinct, more) => {
        const largest = distinct + more;
        const high = BigInt(serialTotal({ distinct, largest }, 0.95).high);
        const [k, m] = [BigInt(distinct), BigInt(largest)];
        expect(20n * choose(m, k)).toBeGreaterThanOrEqual(choose(high, k));
        expect(20n * choose(m, k)).toBeLessThan(choose(high + 1n, k));
      }),
    );
  });

  it("lies within its ends, to the next whole number, and narrows with every serial more", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 1, max: 10 ** 6 }), (distinct, more) => {
        const largest = distinct + more;
        const fewer = serialTotal({ distinct, largest }, 0.9);
        const all = serialTotal({ distinct: distinct + 1, largest }, 0.9);
        expect(fewer.low).toBeLessThanOrEqual(fewer.value);
        expect(fewer.high).toBeGreaterThan(fewer.value - 1);
        expect(all.value).toBeLessThan(fewer.value);
        expect(all.high).toBeLessThanOrEqual(fewer.high);
        expect(serialTotal({ distinct, largest }, 0.99).high).toBeGreaterThanOrEqual(fewer.high);
      }),
    );
  });

  it("is exact where numbers are large and many", () => {
    // Python's math.comb in the formula [S].
    expect(serialTotal({ distinct: 2, largest: 10 ** 6 }, 0.95).high).toBe(4_472_134);
    expect(serialTotal({ distinct: 900, largest: 10 ** 6 }, 0.95).high).toBe(1_003_332);
    expect(serialTotal({ distinct: 500, largest: 500 }, 0.95)).toEqual({ value: 500, low: 500, high: 500 });
  });

  it.each([
    [1, 14, "distinct"],
    [5, 4, "distinct"],
    [2, 1, "largest"],
    [2.5, 14, "distinct"],
    [2, 14.5, "largest"],
  ])("gives no estimate for %d serials up to %d", (distinct, largest, name) => {
    expect(() => serialTotal({ distinct, largest }, 0.95)).toThrow(RangeError);
    expect(() => serialTotal({ distinct, largest }, 0.95)).toThrow(name);
  });

  it("refuses a confidence of 1", () => {
    expect(() => serialTotal({ distinct: 4, largest: 14 }, 1)).toThrow("confidence");
  });
});

describe("serialTotalUnknownStart", () => {
  it("estimates Goodman's 31 serials as he prints it", () => {
    const span = Math.max(...GOODMAN) - Math.min(...GOODMAN) + 1;
    const total = serialTotalUnknownStart({ distinct: GOODMAN.length, span }, 0.95);
    // 2883.3 [P]; 2883.266667 [R] [S]; the true total is quoted as 2885.
    expect(total.value).toBeCloseTo(2883.266667, 6);
    expect(total.low).toBe(2705);
    expect(total.high).toBeGreaterThanOrEqual(2885);
  });

  it.each(reference.unknownStart)(
    "agrees with term-by-term sums in R: $distinct over $span at $confidence",
    (row) => {
      const total = serialTotalUnknownStart({ distinct: row.distinct, span: row.span }, row.confidence);
      expectClose(total.value, row.value);
      expect(total.low).toBe(row.low);
      expect(total.high).toBe(row.high);
    },
  );

  it.each([
    // [(N - w + 1) C(w,k) - (N - w) C(w - 1,k)] / C(N,k) equals alpha exactly, counted by hand.
    [3, 3, 0.8, 6], // 4/20 = 1/5
    [3, 3, 0.99, 25], // 23/2300 = 1/100
    [4, 15, 0.9, 42], // (28·1365 - 27·1001)/111930 = 11193/111930 = 1/10
  ])("keeps a tie: %d serials over %d at %d reach %d", (distinct, span, confidence, high) => {
    expect(serialTotalUnknownStart({ distinct, span }, confidence).high).toBe(high);
  });

  it("is right on average over all samples of 20, with the variance that is known", () => {
    // Enumeration N = 20, k = 4: variance 37.3333 = 2(N + 1)(N - k)/((k - 1)(k + 2)) [R].
    let count = 0;
    let sum = 0;
    let squares = 0;
    let missed = 0;
    for (const sample of samples(20, 4)) {
      const span = (sample[3] as number) - (sample[0] as number) + 1;
      const { value, high } = serialTotalUnknownStart({ distinct: 4, span }, 0.95);
      count += 1;
      sum += value;
      squares += (value - 20) ** 2;
      if (high < 20) missed += 1;
    }
    expect(sum / count).toBeCloseTo(20, 9);
    expect(squares / count).toBeCloseTo(112 / 3, 9);
    expect(missed / count).toBeLessThanOrEqual(0.05);
    expect(missed).toBeGreaterThan(0);
  });

  it("counts the samples of a span rightly, and a greater total makes a short span no likelier", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 5 }), fc.integer({ min: 0, max: 6 }), (distinct, more) => {
        const span = distinct + more;
        const high = serialTotalUnknownStart({ distinct, span }, 0.9).high;
        const share = (total: number): number => {
          let short = 0;
          let all = 0;
          for (const sample of samples(total, distinct)) {
            all += 1;
            if ((sample.at(-1) as number) - (sample[0] as number) < span) short += 1;
          }
          return short / all;
        };
        if (high > 22) return;
        expect(share(high)).toBeGreaterThanOrEqual(0.1);
        expect(share(high + 1)).toBeLessThan(0.1);
      }),
      { numRuns: 30 },
    );
  });

  it("lies within its ends, to the next whole number", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), fc.integer({ min: 0, max: 10 ** 6 }), (distinct, more) => {
        const span = distinct + more;
        const total = serialTotalUnknownStart({ distinct, span }, 0.95);
        expect(total.low).toBe(span);
        expect(total.value).toBeGreaterThanOrEqual(span);
        expect(total.high).toBeGreaterThan(total.value - 1);
      }),
    );
  });

  it("takes numbers that are large and many", () => {
    // Python's math.comb in the formula with two binomials [S].
    expect(serialTotalUnknownStart({ distinct: 900, span: 10 ** 6 }, 0.95).high).toBe(1_005_284);
    expect(serialTotalUnknownStart({ distinct: 3, span: 10 ** 6 }, 0.95).high).toBe(7_388_222);
  });

  it.each([
    [2, 14, "distinct"],
    [5, 4, "distinct"],
    [3, 2, "span"],
    [3, 14.5, "span"],
  ])("gives no estimate for %d serials over %d", (distinct, span, name) => {
    expect(() => serialTotalUnknownStart({ distinct, span }, 0.95)).toThrow(RangeError);
    expect(() => serialTotalUnknownStart({ distinct, span }, 0.95)).toThrow(name);
  });
});
