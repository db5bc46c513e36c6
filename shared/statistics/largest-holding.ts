/**
 * The largest whole number for which a condition holds, exactly.
 * Formula  max { n >= least : holds(n) }
 * Assumes  that the condition holds for `least` and, once it fails, fails for every larger number. Steps
 *          double until one fails, then halve: the condition is asked twice the logarithm of the distance.
 * Checks   largestHolding(1n, (n) => n * n <= 50n) => 7n
 */
export function largestHolding(least: bigint, holds: (n: bigint) => boolean): bigint {
  let held = least;
  let step = 1n;
  while (holds(held + step)) {
    held += step;
    step *= 2n;
  }
  while (step > 1n) {
    step /= 2n;
    if (holds(held + step)) held += step;
  }
  return held;
}
