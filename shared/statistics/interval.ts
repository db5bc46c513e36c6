/** A pair of ends, in the unit of the figure that they bound; `low <= high`. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** A value with its interval. An estimator says for itself whether the value always lies inside. */
export interface Estimate extends Interval {
  readonly value: number;
}
