import type { Estimate } from "./interval.ts";
import { logNormalInterval } from "./log-normal-interval.ts";
import { twoSidedZ } from "./normal-quantile.ts";
import { requireCount } from "./require-number.ts";
import { requireFrequencies } from "./sighting-frequencies.ts";

/**
 * Survivors, from repeated sightings: the bias-corrected Chao1 lower bound of how many examples there are.
 * Formula  S = D + f₁(f₁ - 1) / (2(f₂ + 1)); variance for f₂ > 0
 *          f₁(f₁ - 1)/(2(f₂ + 1)) + f₁(2f₁ - 1)²/(4(f₂ + 1)²) + f₁²f₂(f₁ - 1)²/(4(f₂ + 1)⁴), for f₂ = 0
 *          f₁(f₁ - 1)/2 + f₁(2f₁ - 1)²/4 - f₁⁴/(4S); log-normal interval above D.
 *          For S = D: low = D, high = (D + z √(D·P(1 - P)))/(1 - P) with P = e^(-n/D)
 * Units    examples
 * Assumes  n sightings, independent of one another, of D distinct examples. Where examples differ in how
 *          readily they are sighted, S is a lower bound.
 * Edges    n = 0: no estimate. f₁ < 2: S = D. f₁ = n: every example seen once; the number is given,
 *          but nothing in the data bounds it from above, and whoever shows it has to withhold it.
 * Source   Chao (1984), Scandinavian Journal of Statistics 11: 265-270; Chao (1987), Biometrics 43: 783-791.
 *          There are other forms of Chao1: the classic one has f₁²/(2f₂).
 * Checks   chao1({ distinct: 93, once: 31, twice: 18, sightings: 448 }, 0.95) => { value: 117.473684, low: 103.137806, high: 152.081937 }
 *          chao1({ distinct: 5, once: 0, twice: 5, sightings: 10 }, 0.95) => { value: 5, low: 5, high: 7.516451 }
 * Throws   RangeError unless the counts are whole and agree with one another, and 0 < confidence < 1
 */
export function chao1(
  {
    distinct,
    once,
    twice,
    sightings,
  }: { readonly distinct: number; readonly once: number; readonly twice: number; readonly sightings: number },
  confidence: number,
): Estimate {
  requireFrequencies(sightings, once, twice);
  // Whatever was seen neither once nor twice was seen three times or more.
  const beyond = sightings - once - 2 * twice;
  requireCount(
    "distinct",
    distinct,
    once + twice + Math.min(beyond, 1),
    once + twice + Math.floor(beyond / 3),
  );
  const unseen = (once * (once - 1)) / (2 * (twice + 1));
  if (unseen === 0) {
    const missed = Math.exp(-sightings / distinct);
    const spread = twoSidedZ(confidence) * Math.sqrt(distinct * missed * (1 - missed));
    return { value: distinct, low: distinct, high: (distinct + spread) / (1 - missed) };
  }
  const interval = logNormalInterval(distinct, unseen, variance(once, twice, distinct + unseen), confidence);
  return { value: distinct + unseen, ...interval };
}

function variance(once: number, twice: number, total: number): number {
  const weight = 2 * (twice + 1);
  const common = (once * (once - 1)) / weight + (once * (2 * once - 1) ** 2) / weight ** 2;
  return twice > 0
    ? common + (once ** 2 * twice * (once - 1) ** 2) / (4 * (twice + 1) ** 4)
    : common - once ** 4 / (4 * total);
}
