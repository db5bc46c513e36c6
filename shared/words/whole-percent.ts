/** What is the least or the most is rounded so that it stays so. */
export type Bound = "least" | "most";

const round: Readonly<Record<Bound | "nearest", (percent: number) => number>> = {
  nearest: Math.round,
  // What stands on a whole percent, but for an error of rounding, stays there.
  least: (percent) => Math.floor(percent + 1e-9),
  most: (percent) => Math.ceil(percent - 1e-9),
};

/**
 * A share as the percent that is written of it, a whole number; but half a percent for "under 1%", which is no 0, and 99.5
 * for "over 99%", which is not all.
 * Checks   wholePercent(0.285) => 29    wholePercent(0.8963) => 90    wholePercent(0.8963, "least") => 89
 *          wholePercent(0.8906, "most") => 90    wholePercent(0.57, "least") => 57    wholePercent(0.57, "most") => 57
 *          wholePercent(0.004) => 0.5    wholePercent(0.996) => 99.5    wholePercent(0.009, "least") => 0.5
 */
export function wholePercent(share: number, bound?: Bound): number {
  // Shifted as a decimal, as it is printed: 0.285 * 100 is less than 28.5.
  const percent = share < 0.001 ? 100 * share : Number(`${share}e2`);
  const whole = round[bound ?? "nearest"](percent);
  if (share > 0 && whole <= 0) return 0.5;
  return share < 1 && whole >= 100 ? 99.5 : whole;
}
