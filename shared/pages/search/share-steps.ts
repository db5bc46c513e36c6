import { type Bound, wholePercent } from "../../words/whole-percent.ts";

/**
 * A share as one of the 103 things that a page can say of it: none, under one percent, each whole percent, over
 * 99, all. Two entries that read the same are the same to a filter and to an order.
 */
export function shareStep(share: number, bound?: Bound): number {
  const percent = wholePercent(share, bound);
  if (percent === 0.5) return 1;
  if (percent === 99.5) return 101;
  if (percent <= 0) return 0;
  return percent >= 100 ? 102 : 1 + percent;
}

/** The steps of both ends of a completeness, rounded as its words are. */
export const shareSteps = ({ low, high }: { readonly low: number; readonly high: number }) =>
  low < high
    ? { low: shareStep(low, "least"), high: shareStep(high, "most") }
    : { low: shareStep(low), high: shareStep(high) };

/** A share that reads like the step, for the words to round. */
export function shareOfStep(step: number): number {
  if (step <= 0) return 0;
  if (step >= 102) return 1;
  if (step === 1) return 0.004;
  return step === 101 ? 0.996 : (step - 1) / 100;
}

/** The step in whole percent, for a reader's limits: "under 1%" is less than one, "over 99%" less than all. */
export function percentOfStep(step: number): number {
  if (step <= 0) return 0;
  if (step >= 102) return 100;
  if (step === 1) return 0.5;
  return step === 101 ? 99.5 : step - 1;
}
