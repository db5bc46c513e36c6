import type { PublishedSpread } from "./published.ts";

type Counts = Pick<PublishedSpread, "counts">;

/** How many others an outfit could be compared to, on enough. */
export const othersCompared = ({ counts }: Counts): number =>
  counts.reduce((sum, [, examples]) => sum + examples, 0);

/** Of two examples a drawing shows no more than their one likeness. */
export const isAmongThree = (spread: Counts): boolean => othersCompared(spread) > 1;
