import quantile from "@stdlib/stats-base-dists-normal-quantile";
import { alpha } from "./alpha.ts";

/**
 * The normal quantile of a two-sided confidence: how many standard errors an interval reaches to each side.
 * Formula  the 1 - alpha/2 quantile of the standard normal distribution
 * Units    standard deviations
 * Edges    towards a confidence of 1 digits are lost: nine are left at 0.999999
 * Source   R 4.2.2, qnorm(1 - alpha / 2)
 * Checks   twoSidedZ(0.95) => 1.959963984540054
 *          twoSidedZ(0.99) => 2.575829303548901
 * Throws   RangeError unless 0 < confidence < 1
 */
export function twoSidedZ(confidence: number): number {
  return quantile(1 - alpha(confidence) / 2, 0, 1);
}
