import type { Estimate } from "./interval.ts";
import { logNormalInterval } from "./log-normal-interval.ts";
import { requireCount } from "./require-number.ts";

/**
 * Survivors, from two independent lists and how far they overlap.
 * Formula  N̂ = (n₁ + 1)(n₂ + 1)/(m + 1) - 1; with r = n₁ + n₂ - m seen, N̂ - r = (n₁ - m)(n₂ - m)/(m + 1);
 *          variance (n₁ + 1)(n₂ + 1)(n₁ - m)(n₂ - m)/((m + 1)²(m + 2)); log-normal interval above r
 * Units    examples
 * Assumes  that being on one list makes it neither more nor less likely to be on the other, that nothing
 *          was made or lost between them, and that an example on both is recognised as one
 * Edges    an empty list: no estimate. One list wholly within the other: r to r. m = 0: very wide, not refused.
 * Source   Chapman (1951), University of California Publications in Statistics 1: 131-160; variance: Seber (1970);
 *          interval: Chao (1987), Biometrics 43: 783-791
 * Checks   chapman({ first: 10, second: 15, both: 5 }, 0.95) => { value: 28.333333, low: 22.385262, high: 49.113973 }
 *          chapman({ first: 4, second: 9, both: 4 }, 0.95) => { value: 9, low: 9, high: 9 }
 * Throws   RangeError unless first and second are whole numbers of at least 1, both a whole number no larger
 *          than either, and 0 < confidence < 1
 */
export function chapman(
  { first, second, both }: { readonly first: number; readonly second: number; readonly both: number },
  confidence: number,
): Estimate {
  requireCount("first", first, 1);
  requireCount("second", second, 1);
  requireCount("both", both, 0, Math.min(first, second));
  const seen = first + second - both;
  const outside = (first - both) * (second - both);
  const variance = ((first + 1) * (second + 1) * outside) / ((both + 1) ** 2 * (both + 2));
  const unseen = outside / (both + 1);
  if (unseen === 0) return { value: seen, low: seen, high: seen };
  return { value: seen + unseen, ...logNormalInterval(seen, unseen, variance, confidence) };
}
