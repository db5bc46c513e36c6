/**
 * A share as one of the 103 things that a page can say of it: none, under one percent, each whole percent, over
 * 99, all. Two entries that read the same are the same to a filter and to an order.
 */
export function shareStep(share: number): number {
  if (share <= 0) return 0;
  if (share >= 1) return 102;
  if (share < 0.005) return 1;
  if (share >= 0.995) return 101;
  // Shifted as a decimal, as it is printed: 0.285 * 100 is less than 28.5.
  return 1 + Math.round(Number(`${share}e2`));
}

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
