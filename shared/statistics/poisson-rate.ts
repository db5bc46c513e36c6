import quantile from "@stdlib/stats-base-dists-chisquare-quantile";
import { alpha } from "./alpha.ts";
import type { Estimate } from "./interval.ts";
import { requireCount, requirePositive } from "./require-number.ts";

/**
 * How often something turns up, with its exact interval.
 * Formula  k/T; low = χ²(alpha/2; 2k)/2T, high = χ²(1 - alpha/2; 2k + 2)/2T
 * Units    events per unit of exposure
 * Assumes  events independent of one another at a constant rate, and every one of them noticed
 * Edges    k = 0: the value and low are 0; high keeps alpha/2, as for every other k
 * Source   Garwood (1936), Biometrika 28: 437-442
 * Checks   poissonRate(3, 12.5, 0.95) => { value: 0.24, low: 0.049494, high: 0.701382 }
 *          poissonRate(0, 8, 0.95) => { value: 0, low: 0, high: 0.461110 }
 * Throws   RangeError unless events is a whole number of at least 0, exposure a finite number above 0,
 *          and 0 < confidence < 1
 */
export function poissonRate(events: number, exposure: number, confidence: number): Estimate {
  requireCount("events", events, 0);
  requirePositive("exposure", exposure);
  const tail = alpha(confidence) / 2;
  return {
    value: events / exposure,
    // For no events: of no degrees of freedom, whose every quantile is 0.
    low: quantile(tail, 2 * events) / (2 * exposure),
    high: quantile(1 - tail, 2 * events + 2) / (2 * exposure),
  };
}
