import type { Estimate } from "./interval.ts";
import { requirePositive } from "./require-number.ts";

/**
 * The share of what was made that survives.
 * Formula  survivors/made; low = survivors.low/made.high, high = min(1, survivors.high/made.low)
 * Units    a share, 0 to 1
 * Assumes  nothing of how the two intervals depend on one another: the ends are worst cases, so that the
 *          confidence of the whole is at least the sum of both less 1
 * Edges    a documented count is its own low and high. More survivors than were made is a conflict of the
 *          evidence, and no share.
 * Source   interval arithmetic: Moore (1966), Interval Analysis
 * Checks   survivalRatio({ value: 30, low: 20, high: 60 }, { value: 120, low: 100, high: 160 }) => { value: 0.25, low: 0.125, high: 0.6 }
 * Throws   RangeError unless made is above 0, survivors are not negative and survivors.value <= made.value
 */
export function survivalRatio(survivors: Estimate, made: Estimate): Estimate {
  requirePositive("made.low", made.low);
  if (!(survivors.low >= 0))
    throw new RangeError(`Found survivors.low = ${survivors.low}; expected at least 0.`);
  if (!(survivors.value <= made.value)) {
    throw new RangeError(`Found survivors = ${survivors.value}; expected no more than made = ${made.value}.`);
  }
  return {
    value: survivors.value / made.value,
    low: survivors.low / made.high,
    high: Math.min(1, survivors.high / made.low),
  };
}
