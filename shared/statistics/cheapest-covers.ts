import {
  type BitSet,
  bitSet,
  countCommon,
  difference,
  hasBit,
  intersection,
  isEmpty,
  membersOf,
  removeBit,
} from "./bit-set.ts";
import { type CoverProblem, coverBound, type OpenProblem } from "./cover-bound.ts";
import { decisivePairs, usableColumns } from "./cover-reductions.ts";

/** A choice that covers some of the pairs to be told apart. */
export interface CoverColumn {
  /** A whole number of at least 0. */
  readonly effort: number;
  /** The indices of the pairs that it covers. */
  readonly pairs: readonly number[];
  /** Into how many groups it can part the points at most. */
  readonly parts: number;
}

export interface Covers {
  /** Column indices; all the cheapest covers, or one, the best found, where unproven. */
  readonly covers: readonly (readonly number[])[];
  readonly proven: boolean;
  /** Whether `covers` holds every cheapest cover: false where unproven, and where there are more than `limit`. */
  readonly complete: boolean;
}

/**
 * All cheapest choices of columns that between them cover every pair of points: exact branch and bound.
 * It branches on the pair that the fewest columns cover; each branch takes one of them and forbids those
 * before it, so that no cover is met twice. Only what can make no difference is dropped beforehand: a column
 * all of whose pairs a cheaper one covers, and a pair that is covered whenever another is.
 *
 * Formula  least Σ effort, then least number of columns, over the covers
 * Assumes  that every pair is covered by some column
 * Edges    no pair: one cover, the empty one. `budget` counts the nodes of the search; where it runs out the
 *          best cover met so far is given, at worst the greedy one.
 * Source   set cover; the greedy start after Chvátal (1979), Mathematics of Operations Research 4: 233-235
 */
export function cheapestCovers(
  columns: readonly CoverColumn[],
  pairs: readonly (readonly [number, number])[],
  { budget, limit }: { readonly budget: number; readonly limit: number },
): Covers {
  const covers = columns.map((column) => bitSet(pairs.length, column.pairs));
  // Least effort first, then fewest columns: a cover of more effort has a column at least, and so no other
  // has as many columns more as there are.
  const efforts = columns.map((column) => column.effort);
  const ones = columns.map(() => 1);
  const unit = columns.length;
  const costs = efforts.map((effort) => effort * unit + 1);
  const costOf = (chosen: readonly number[]) =>
    chosen.reduce((sum, column) => sum + (costs[column] as number), 0);

  const usable = usableColumns(covers, costs);
  const coveredBy = pairs.map((_, pair) =>
    bitSet(
      columns.length,
      usable.filter((column) => hasBit(covers[column] as BitSet, pair)),
    ),
  );
  const everyPair = bitSet(pairs.length, pairs.keys());
  const decisive = bitSet(pairs.length, decisivePairs(coveredBy));
  const problem: CoverProblem = { pairs, covers, coveredBy, parts: columns.map(({ parts }) => parts) };

  let best = greedyCover(decisive, covers, costs);
  let cheapest: (readonly number[])[] = [];
  let overflow = false;
  let nodes = 0;

  const record = (chosen: readonly number[]): void => {
    if (costOf(chosen) < costOf(best)) {
      best = chosen;
      cheapest = [];
      overflow = false;
    }
    if (cheapest.length < limit) cheapest.push(chosen);
    else overflow = true;
  };
  const search = (left: OpenProblem, chosen: readonly number[]): void => {
    // Once the list is full, only something cheaper is of interest.
    const room = costOf(best) - costOf(chosen) - (overflow ? 1 : 0);
    if (room < 0) return;
    if (isEmpty(left.decisive)) {
      record(chosen);
      return;
    }
    nodes += 1;
    if (nodes > budget) return;
    if (coverBound(problem, efforts, left) * unit + coverBound(problem, ones, left) > room) return;
    const allowed = left.allowed.slice();
    for (const column of branches(left, coveredBy, covers, costs)) {
      removeBit(allowed, column);
      const covered = covers[column] as BitSet;
      search(
        {
          open: difference(left.open, covered),
          decisive: difference(left.decisive, covered),
          allowed,
        },
        [...chosen, column],
      );
    }
  };
  search({ open: everyPair, decisive, allowed: bitSet(columns.length, usable) }, []);

  const proven = nodes <= budget;
  return {
    covers: proven ? cheapest : [best],
    proven,
    complete: proven && !overflow,
  };
}

/** The columns of the open pair that has the fewest, those that cover most for their cost first. */
function branches(
  { decisive, allowed }: OpenProblem,
  coveredBy: readonly BitSet[],
  covers: readonly BitSet[],
  costs: readonly number[],
): number[] {
  let fewest = allowed;
  let count = Infinity;
  for (const pair of membersOf(decisive)) {
    const size = countCommon(coveredBy[pair] as BitSet, allowed);
    if (size >= count) continue;
    fewest = coveredBy[pair] as BitSet;
    count = size;
  }
  const gain = (column: number) =>
    countCommon(decisive, covers[column] as BitSet) / (costs[column] as number);
  return membersOf(intersection(fewest, allowed)).sort((a, b) => gain(b) - gain(a));
}

/** A cover taken column by column, each time the one that covers most for its cost. */
function greedyCover(pairs: BitSet, covers: readonly BitSet[], costs: readonly number[]): readonly number[] {
  const chosen: number[] = [];
  let open = pairs;
  while (!isEmpty(open)) {
    const gains = covers.map((cover, column) => countCommon(open, cover) / (costs[column] as number));
    const next = gains.indexOf(Math.max(...gains));
    chosen.push(next);
    open = difference(open, covers[next] as BitSet);
  }
  return chosen;
}
