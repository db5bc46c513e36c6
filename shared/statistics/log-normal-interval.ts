import type { Interval } from "./interval.ts";
import { twoSidedZ } from "./normal-quantile.ts";

/**
 * An interval for a count of which a part is certain: the unseen remainder is taken as log-normal,
 * so that the low end never falls below what was seen.
 * Formula  with K = exp(z √ln(1 + var/unseen²)): seen + unseen/K to seen + unseen·K
 * Units    those of `seen`
 * Assumes  unseen > 0; its variance is that of the whole estimate, as `seen` is known
 * Source   Chao (1987), Biometrics 43: 783-791
 * Checks   logNormalInterval(20, 28.333333 - 20, 34.920635, 0.95) => { low: 22.385262, high: 49.113973 }
 */
export function logNormalInterval(
  seen: number,
  unseen: number,
  variance: number,
  confidence: number,
): Interval {
  const factor = Math.exp(twoSidedZ(confidence) * Math.sqrt(Math.log1p(variance / unseen ** 2)));
  return { low: seen + unseen / factor, high: seen + unseen * factor };
}
