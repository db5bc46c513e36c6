import type { Estimate } from "./interval.ts";
import { twoSidedZ } from "./normal-quantile.ts";
import { requireCount } from "./require-number.ts";

/**
 * A share with Wilson's score interval, without continuity correction.
 * Formula  with p = x/n, q = 1 - p: (2np + z² ± z √(z² + 4npq)) / (2(n + z²))
 * Units    a share, 0 to 1
 * Assumes  independent trials of one chance
 * Edges    n = 0: no estimate. x = 0: low is exactly 0; x = n: high is exactly 1. The value always lies inside.
 * Source   Wilson (1927), Journal of the American Statistical Association 22: 209-212;
 *          values: Newcombe (1998), Statistics in Medicine 17: 857-872, Table I
 * Checks   wilson(81, 263, 0.95) => { value: 0.307985, low: 0.255289, high: 0.366210 }
 *          wilson(0, 20, 0.95) => { value: 0, low: 0, high: 0.161125 }
 * Throws   RangeError unless trials is a whole number of at least 1 and successes one from 0 to trials,
 *          and 0 < confidence < 1
 */
export function wilson(successes: number, trials: number, confidence: number): Estimate {
  requireCount("trials", trials, 1);
  requireCount("successes", successes, 0, trials);
  const z = twoSidedZ(confidence);
  const failures = trials - successes;
  const spread = z * Math.sqrt(z * z + (4 * successes * failures) / trials);
  const scale = 2 * (trials + z * z);
  return {
    value: successes / trials,
    low: (2 * successes + z * z - spread) / scale,
    // Without failures the bound is 1; the quotient may round to either side of it.
    high: failures === 0 ? 1 : (2 * successes + z * z + spread) / scale,
  };
}
