import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bitSet } from "../../shared/statistics/bit-set.ts";
import { cheapestCovers } from "../../shared/statistics/cheapest-covers.ts";
import { coverBound } from "../../shared/statistics/cover-bound.ts";

/** The bound on a whole problem: columns as lists of pairs, every column allowed, every pair open. */
function boundOf(
  columns: readonly { readonly pairs: readonly number[]; readonly parts: number; readonly weight: number }[],
  pairs: readonly (readonly [number, number])[],
): number {
  const covers = columns.map((column) => bitSet(pairs.length, column.pairs));
  const coveredBy = pairs.map((_, pair) =>
    bitSet(
      columns.length,
      columns.flatMap((column, index) => (column.pairs.includes(pair) ? [index] : [])),
    ),
  );
  const everyPair = bitSet(pairs.length, pairs.keys());
  return coverBound(
    { pairs, covers, coveredBy, parts: columns.map(({ parts }) => parts) },
    columns.map(({ weight }) => weight),
    { open: everyPair, decisive: everyPair, allowed: bitSet(columns.length, columns.keys()) },
  );
}

/** All pairs of `points` points, in order. */
const pairsOf = (points: number) =>
  Array.from({ length: points }, (_, a) =>
    Array.from({ length: points - a - 1 }, (_, more) => [a, a + more + 1] as const),
  ).flat();

describe("coverBound", () => {
  it("shares: three columns that cover two of three pairs each cost at least one and a half, so two", () => {
    const triangle = [
      { pairs: [0, 1], parts: 9, weight: 1 },
      { pairs: [1, 2], parts: 9, weight: 1 },
      { pairs: [0, 2], parts: 9, weight: 1 },
    ];
    expect(
      boundOf(triangle, [
        [0, 1],
        [2, 3],
        [4, 5],
      ]),
    ).toBe(2);
  });

  it("dual: pairs that only one column covers cost that column, whatever it covers besides", () => {
    // The pairs that all three cover come first, and must not use up the weight of the two that are needed.
    const columns = [
      { pairs: [0, 1, 2, 3], parts: 9, weight: 5 },
      { pairs: [0, 1, 2, 4], parts: 9, weight: 7 },
      { pairs: [0, 1, 2], parts: 9, weight: 1 },
    ];
    const pairs = [0, 2, 4, 6, 8].map((point) => [point, point + 1] as const);
    expect(boundOf(columns, pairs)).toBe(12);
  });

  it("cliques: finds the four points that are all to be told apart, though others come first", () => {
    const pairs = [[0, 1], ...pairsOf(4).map(([a, b]) => [a + 2, b + 2])] as [number, number][];
    const all = pairs.map((_, index) => index);
    expect(
      boundOf(
        [1, 1, 1].map((weight) => ({ pairs: all, parts: 2, weight })),
        pairs,
      ),
    ).toBe(2);
  });

  it("cliques: eight points told apart by halves take three columns, by thirds two, of the least weights", () => {
    const pairs = pairsOf(8);
    const columns = (parts: number) =>
      [4, 2, 3, 9].map((weight) => ({ pairs: pairs.map((_, index) => index), parts, weight }));
    expect(boundOf(columns(2), pairs)).toBe(9);
    expect(boundOf(columns(3), pairs)).toBe(5);
    expect(boundOf(columns(8), pairs)).toBe(2);
  });

  it("says where the parts cannot multiply to the points", () => {
    expect(boundOf([{ pairs: [0, 1, 2], parts: 2, weight: 1 }], pairsOf(3))).toBe(Infinity);
  });

  it("never passes the cheapest cover", () => {
    const problem = fc.integer({ min: 2, max: 6 }).chain((points) =>
      fc.array(
        fc.tuple(
          fc.array(fc.integer({ min: 0, max: 3 }), { minLength: points, maxLength: points }),
          fc.integer({ min: 1, max: 4 }),
        ),
        {
          minLength: 1,
          maxLength: 7,
        },
      ),
    );
    fc.assert(
      fc.property(problem, (features) => {
        const points = features[0]?.[0].length ?? 0;
        const columns = features.map(([values, weight]) => ({
          weight,
          parts: new Set(values).size,
          apart: pairsOf(points).map(([a, b]) => values[a] !== values[b]),
        }));
        const separable = pairsOf(points).flatMap((pair, index) =>
          columns.some(({ apart }) => apart[index]) ? [{ pair, index }] : [],
        );
        const problemColumns = columns.map(({ weight, parts, apart }) => ({
          weight,
          effort: weight,
          parts,
          pairs: separable.flatMap(({ index }, row) => (apart[index] ? [row] : [])),
        }));
        const pairs = separable.map(({ pair }) => pair);
        const [cover = []] = cheapestCovers(problemColumns, pairs, { budget: 10_000, limit: 1 }).covers;
        const cost = cover.reduce((sum, column) => sum + (problemColumns[column]?.weight ?? 0), 0);
        expect(boundOf(problemColumns, pairs)).toBeLessThanOrEqual(cost);
      }),
      { numRuns: 500 },
    );
  });
});
