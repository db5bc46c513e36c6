import { type BitSet, countCommon, difference, intersection, membersOf } from "./bit-set.ts";

/** What a bound needs to know of a cover problem; sets of pairs by column, and of columns by pair. */
export interface CoverProblem {
  readonly pairs: readonly (readonly [number, number])[];
  readonly covers: readonly BitSet[];
  readonly coveredBy: readonly BitSet[];
  /** Into how many groups a column can part the points at most. */
  readonly parts: readonly number[];
}

/** What is left to do: every open pair, those of them that decide, and the columns still allowed. */
export interface OpenProblem {
  readonly open: BitSet;
  readonly decisive: BitSet;
  readonly allowed: BitSet;
}

/**
 * A whole number that no cover of the open pairs can undercut in the sum of its weights.
 * Formula  the greatest of three bounds:
 *          shares: Σ over pairs of the least weight/gain of a column that covers it, gain the open pairs it covers;
 *          dual: pair by pair, the least weight left among its columns, taken off all of them;
 *          cliques: of b points that are all still to be told apart, a column of t parts leaves at least b/t
 *          together, so that the parts of those taken must multiply to b; at least so many of the smallest weights
 * Assumes  whole weights; only then may a bound be rounded up
 * Source   set-cover duality; clique bound after Moret & Shapiro (1985), SIAM Journal on Scientific and
 *          Statistical Computing 6: 983-1003
 */
export function coverBound(problem: CoverProblem, weights: readonly number[], left: OpenProblem): number {
  const columns = membersOf(left.allowed);
  // Sums of thirds and fifths must not be rounded up past a whole number that they stand for.
  const shares = Math.ceil(sharesBound(problem, weights, left, columns) - 1e-9);
  return Math.max(shares, dualBound(problem, weights, left), cliqueBound(problem, weights, left, columns));
}

function sharesBound(
  { covers }: CoverProblem,
  weights: readonly number[],
  left: OpenProblem,
  columns: number[],
): number {
  const prices = columns
    .map((column) => ({ column, gain: countCommon(left.decisive, covers[column] as BitSet) }))
    .filter(({ gain }) => gain > 0)
    .map(({ column, gain }) => ({ column, price: (weights[column] as number) / gain }))
    .sort((a, b) => a.price - b.price);
  let unclaimed = left.decisive;
  let sum = 0;
  for (const { column, price } of prices) {
    sum += price * countCommon(unclaimed, covers[column] as BitSet);
    unclaimed = difference(unclaimed, covers[column] as BitSet);
  }
  return sum;
}

function dualBound({ coveredBy }: CoverProblem, weights: readonly number[], left: OpenProblem): number {
  const residual = [...weights];
  const rows = membersOf(left.decisive)
    .map((pair) => membersOf(intersection(coveredBy[pair] as BitSet, left.allowed)))
    .sort((a, b) => a.length - b.length);
  let sum = 0;
  for (const row of rows) {
    const least = row.reduce((smallest, column) => Math.min(smallest, residual[column] as number), Infinity);
    sum += least;
    for (const column of row) residual[column] = (residual[column] as number) - least;
  }
  return sum;
}

function cliqueBound(
  { pairs, parts }: CoverProblem,
  weights: readonly number[],
  left: OpenProblem,
  columns: number[],
): number {
  const size = greedyClique(pairs, left.open);
  const mostParts = columns.map((column) => parts[column] as number).sort((a, b) => b - a);
  const leastWeights = columns.map((column) => weights[column] as number).sort((a, b) => a - b);
  let sum = 0;
  let together = 1;
  for (let taken = 0; together < size; taken++) {
    if (taken === columns.length) return Infinity;
    together *= mostParts[taken] as number;
    sum += leastWeights[taken] as number;
  }
  return sum;
}

/** How many points, taken greedily by the number of their open pairs, are pairwise still open. */
function greedyClique(pairs: readonly (readonly [number, number])[], open: BitSet): number {
  const neighbours = new Map<number, Set<number>>();
  for (const pair of membersOf(open)) {
    const [a, b] = pairs[pair] as readonly [number, number];
    neighbours.set(a, (neighbours.get(a) ?? new Set()).add(b));
    neighbours.set(b, (neighbours.get(b) ?? new Set()).add(a));
  }
  const clique: number[] = [];
  for (const [point, near] of [...neighbours].sort((a, b) => b[1].size - a[1].size)) {
    if (clique.every((other) => near.has(other))) clique.push(point);
  }
  return clique.length;
}
