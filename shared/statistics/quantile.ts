/** The two quartiles and the median between them. */
export interface Quartiles {
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
}

/**
 * A sample quantile, by definition 7 of Hyndman & Fan: linear between order statistics.
 * Formula  with h = (n - 1)p, counted from the smallest as 0: x[⌊h⌋] + (h - ⌊h⌋)(x[⌈h⌉] - x[⌊h⌋])
 * Units    those of the values
 * Assumes  nothing; the values need no order
 * Edges    n = 0: no quantile. n = 1: that value. Ties: no special case.
 * Source   Hyndman & Fan (1996), The American Statistician 50: 361-365, definition 7
 * Checks   quantile([3, 6, 7, 8, 8, 10, 13, 15, 16, 20], 0.25) => 7.25
 *          quantile([42], 0.9) => 42
 * Throws   RangeError unless there is a value, every value is finite and 0 <= p <= 1
 */
export function quantile(values: readonly number[], p: number): number {
  if (values.length === 0) throw new RangeError("Found no values; expected at least one.");
  if (!(p >= 0 && p <= 1)) throw new RangeError(`Found p = ${p}; expected a number from 0 to 1.`);
  const strange = values.find((value) => !Number.isFinite(value));
  if (strange !== undefined)
    throw new RangeError(`Found ${strange} among the values; expected finite numbers.`);
  const sorted = values.toSorted((a, b) => a - b);
  const position = (sorted.length - 1) * p;
  const below = sorted[Math.floor(position)] as number;
  const above = sorted[Math.ceil(position)] as number;
  return below + (position - Math.floor(position)) * (above - below);
}

/**
 * Quartiles and median, by the same definition 7.
 * Formula  quantile(values, ¼), quantile(values, ½), quantile(values, ¾)
 * Units    those of the values
 * Source   as for `quantile`; values: the worked example that d3-array and simple-statistics test against
 * Checks   quartiles([3, 6, 7, 8, 8, 10, 13, 15, 16, 20]) => { lower: 7.25, median: 9, upper: 14.5 }
 * Throws   RangeError unless there is a value and every value is finite
 */
export function quartiles(values: readonly number[]): Quartiles {
  return { lower: quantile(values, 0.25), median: quantile(values, 0.5), upper: quantile(values, 0.75) };
}
