import { alpha } from "./alpha.ts";
import type { Estimate } from "./interval.ts";
import { requireCount, requirePositive } from "./require-number.ts";

/**
 * How long until the next event, after k of them in an exposure T: the predictive distribution of the
 * wait under Jeffreys' prior for the rate, a Lomax distribution of shape k + ½ and scale T.
 * Formula  P(W > t) = (T/(T + t))^(k + ½), so that quantile p is T((1 - p)^(-1/(k + ½)) - 1);
 *          the value is the median, low and high the alpha/2 and 1 - alpha/2 quantiles
 * Units    those of the exposure
 * Assumes  events independent of one another at a constant rate, and every one of them noticed
 * Edges    k = 0: the median is 3T and the mean infinite, which is why the median is given
 * Source   Lomax (1954), Journal of the American Statistical Association 49: 847-852;
 *          Jeffreys' prior λ^(-1/2) for a Poisson rate
 * Checks   waitingTime(3, 12.5, 0.9) => { value: 2.737671, low: 0.184539, high: 16.919336 }
 *          waitingTime(0, 8, 0.9) => { value: 24, low: 0.864266, high: 3192 }
 * Throws   RangeError unless events is a whole number of at least 0, exposure a finite number above 0,
 *          and 0 < confidence < 1
 */
export function waitingTime(events: number, exposure: number, confidence: number): Estimate {
  requireCount("events", events, 0);
  requirePositive("exposure", exposure);
  const tail = alpha(confidence) / 2;
  // expm1 and log1p keep the digits of a short wait, where the power is close to 1.
  const wait = (logSurvival: number) => exposure * Math.expm1(-logSurvival / (events + 0.5));
  return { value: wait(Math.log(0.5)), low: wait(Math.log1p(-tail)), high: wait(Math.log(tail)) };
}
