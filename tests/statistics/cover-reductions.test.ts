import { describe, expect, it } from "vitest";
import { bitSet } from "../../shared/statistics/bit-set.ts";
import { decisivePairs, usableColumns } from "../../shared/statistics/cover-reductions.ts";

const sets = (...members: number[][]) => members.map((of) => bitSet(40, of));

describe("usableColumns", () => {
  it.each([
    ["a column that covers nothing", sets([], [1]), [1, 1], [1]],
    ["a dearer column that covers less", sets([1, 39], [1]), [1, 2], [0]],
    ["a dearer column that covers the same", sets([1], [1]), [2, 1], [1]],
    ["not an equally dear one that covers less", sets([1, 2], [1]), [1, 1], [0, 1]],
    ["not an equally dear one that covers the same", sets([1], [1]), [1, 1], [0, 1]],
    ["not a dearer one that covers something more", sets([1, 2], [1, 3]), [1, 2], [0, 1]],
    ["not a cheaper one that covers less", sets([1, 2], [1]), [2, 1], [0, 1]],
  ])("drops %s", (_, covers, costs, kept) => {
    expect(usableColumns(covers, costs)).toEqual(kept);
  });
});

describe("decisivePairs", () => {
  it.each([
    ["a pair that more columns cover", sets([1], [1, 2]), [0]],
    ["it in either order", sets([1, 2], [1]), [1]],
    ["all but the first of pairs that the same columns cover", sets([1], [1], [1]), [0]],
    ["what follows from what follows", sets([1, 2, 39], [1, 2], [1]), [2]],
    ["not pairs that have one column each of their own", sets([1, 2], [2, 3]), [0, 1]],
  ])("drops %s", (_, coveredBy, kept) => {
    expect(decisivePairs(coveredBy)).toEqual(kept);
  });
});
