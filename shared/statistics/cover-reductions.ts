import { type BitSet, isEmpty, isSubset } from "./bit-set.ts";

/**
 * The columns that a cheapest cover may hold: not those that cover nothing, nor those all of whose pairs some
 * cheaper column covers. A column that costs as much as another stays, since a cheapest cover may hold either.
 * Formula  { f : covers f ≠ ∅, and no g with covers f ⊆ covers g and cost g < cost f }
 */
export function usableColumns(covers: readonly BitSet[], costs: readonly number[]): number[] {
  return [...covers.keys()].filter((column) => {
    const own = covers[column] as BitSet;
    const cost = costs[column] as number;
    return (
      !isEmpty(own) && !covers.some((other, index) => (costs[index] as number) < cost && isSubset(own, other))
    );
  });
}

/**
 * The pairs on which it depends whether all are covered: a pair that is covered whenever some other one is
 * follows from that one. Of pairs that the same columns cover, the first stands for all.
 * Formula  { p : no q with columns q ⊊ columns p, and no q before p with columns q = columns p }
 */
export function decisivePairs(coveredBy: readonly BitSet[]): number[] {
  return [...coveredBy.keys()].filter((pair) => {
    const own = coveredBy[pair] as BitSet;
    return !coveredBy.some((other, index) => isSubset(other, own) && (index < pair || !isSubset(own, other)));
  });
}
