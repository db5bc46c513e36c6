import { describe, expect, it } from "vitest";
import { type CoverColumn, cheapestCovers } from "../../shared/statistics/cheapest-covers.ts";

const NO_LIMIT = { budget: 1_000_000, limit: 1_000_000 };

/** All pairs of `points` points, in order. */
const pairsOf = (points: number) =>
  Array.from({ length: points }, (_, a) =>
    Array.from({ length: points - a - 1 }, (_, more) => [a, a + more + 1] as const),
  ).flat();

/** A column for each feature: what its values, a letter a point, tell apart. */
function columnsOf(features: readonly string[], efforts: readonly number[] = []): CoverColumn[] {
  return features.map((values, index) => ({
    effort: efforts[index] ?? 1,
    pairs: pairsOf(values.length).flatMap(([a, b], pair) => (values[a] === values[b] ? [] : [pair])),
    parts: new Set(values).size,
  }));
}

/** The seven ways to part eight points by the parity of a mask; any three that are independent tell all apart. */
const PARITIES = [1, 2, 3, 4, 5, 6, 7].map((mask) =>
  Array.from(
    { length: 8 },
    (_, point) => [...(point & mask).toString(2)].filter((bit) => bit === "1").length % 2,
  ).join(""),
);

function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Sixteen points by twenty features of two or three values. */
function randomColumns(): CoverColumn[] {
  const random = randomNumbers(5);
  const features = Array.from({ length: 20 }, (_, index) =>
    Array.from({ length: 16 }, () => Math.floor(random() * (2 + (index % 2)))).join(""),
  );
  return columnsOf(
    features,
    features.map(() => 1 + Math.floor(random() * 3)),
  );
}

describe("cheapestCovers", () => {
  it("covers no pair with no column", () => {
    expect(cheapestCovers([], [], { budget: 0, limit: 1 })).toEqual({
      covers: [[]],
      proven: true,
      complete: true,
    });
  });

  it("counts a node for every choice that it weighs: one pair and one column make one", () => {
    const columns = columnsOf(["ab"]);
    const whole = { covers: [[0]], proven: true, complete: true };
    expect(cheapestCovers(columns, pairsOf(2), { budget: 1, limit: 1 })).toEqual(whole);
    expect(cheapestCovers(columns, pairsOf(2), { budget: 0, limit: 1 })).toEqual({
      ...whole,
      proven: false,
      complete: false,
    });
  });

  it("finds every basis of the plane of seven points: 7·6·4/3! = 28", () => {
    const { covers, complete } = cheapestCovers(columnsOf(PARITIES), pairsOf(8), NO_LIMIT);
    expect(new Set(covers.map((cover) => cover.toSorted().join()))).toHaveProperty("size", 28);
    expect(covers).toHaveLength(28);
    expect(complete).toBe(true);
    // A line of the plane, such as 1, 2 and 3, is no basis: 3 = 1 xor 2.
    expect(covers.map((cover) => cover.toSorted().join())).not.toContain("0,1,2");
  });

  it("holds no more covers than the limit", () => {
    for (const limit of [1, 27]) {
      const { covers, proven, complete } = cheapestCovers(columnsOf(PARITIES), pairsOf(8), {
        ...NO_LIMIT,
        limit,
      });
      expect(covers).toHaveLength(limit);
      expect({ proven, complete }).toEqual({ proven: true, complete: false });
    }
    expect(cheapestCovers(columnsOf(PARITIES), pairsOf(8), { ...NO_LIMIT, limit: 28 }).complete).toBe(true);
  });

  it.each([
    // As many as it took when this was written; fewer would be welcome.
    ["the plane of seven points", columnsOf(PARITIES), 8, 28, 16],
    ["the plane, one of its bases", columnsOf(PARITIES), 8, 1, 9],
    ["sixteen points by twenty features", randomColumns(), 16, 100, 51],
  ])("needs few nodes for %s", (_, columns, points, limit, budget) => {
    expect(cheapestCovers(columns, pairsOf(points), { budget, limit }).proven).toBe(true);
  });

  it("passes by a column that a cheaper one does the work of, and pairs that follow from others", () => {
    // Two features that change once along the row of points, and a dear one that does what the first does.
    const { covers } = cheapestCovers(
      columnsOf(["aabb", "abbb", "aaab", "aabb"], [1, 1, 1, 3]),
      pairsOf(4),
      NO_LIMIT,
    );
    expect(covers.map((cover) => cover.toSorted())).toEqual([[0, 1, 2]]);
  });

  it("gives the greedy cover where there is no budget: whichever covers most for its cost, time after time", () => {
    // Four points: the first column covers 4 of 6 pairs, each other one 3; the last is dear.
    const columns = columnsOf(["aabb", "abbb", "aaab", "abcd"], [1, 1, 1, 9]);
    expect(cheapestCovers(columns, pairsOf(4), { budget: 0, limit: 5 }).covers).toEqual([[0, 1, 2]]);
    // Cheap enough, it goes first and does it alone.
    const cheap = columnsOf(["aabb", "abbb", "aaab", "abcd"], [1, 1, 1, 1]);
    expect(cheapestCovers(cheap, pairsOf(4), { budget: 0, limit: 5 }).covers).toEqual([[3]]);
  });
});
