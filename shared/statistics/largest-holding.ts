/**
 * The largest whole number for which a condition holds, exactly.
 * Formula  max { n >= least : holds(n) }
 * Assumes  that the condition holds for `least` and, once it fails, fails for every larger number.
 *          The guess decides only how soon the answer is found: steps away from it double, then halve.
 * Checks   largestHolding(1n, 3n, (n) => n * n <= 50n) => 7n
 *          largestHolding(1n, 90n, (n) => n * n <= 50n) => 7n
 */
export function largestHolding(least: bigint, guess: bigint, holds: (n: bigint) => boolean): bigint {
  let held = guess > least ? guess : least;
  for (let step = 1n; held > least && !holds(held); step *= 2n) {
    held = held - step > least ? held - step : least;
  }
  let step = 1n;
  while (holds(held + step)) {
    held += step;
    step *= 2n;
  }
  let failed = held + step;
  while (failed - held > 1n) {
    const middle: bigint = (held + failed) / 2n;
    if (holds(middle)) held = middle;
    else failed = middle;
  }
  return held;
}
