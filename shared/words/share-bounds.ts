import type { NumberWords } from "./numbers.ts";

/** The ends of a completeness as they are written. */
export interface ShareBounds {
  /** Rounded down where more is possible; where nothing is uncertain, the one share that it is. */
  readonly certain: string;
  /** Rounded up; null where nothing is uncertain, which the numbers say and not how they are rounded. */
  readonly possible: string | null;
}

export const shareBounds = (
  { low, high }: { readonly low: number; readonly high: number },
  { share }: Pick<NumberWords, "share">,
): ShareBounds =>
  low < high
    ? { certain: share(low, "least"), possible: share(high, "most") }
    : { certain: share(low), possible: null };
