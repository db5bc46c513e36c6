import type { PublishedItem } from "../../publication/published.ts";
import { isFate } from "../../terms/states.ts";
import type { Words } from "../../words/words.ts";

/** What has become of an outfit that is nowhere to be had. */
export interface FateView {
  readonly headline: string;
  readonly said: readonly string[];
  /** Whether nobody may read past it. */
  readonly isUrgent: boolean;
}

export const fateView = ({ status }: PublishedItem, { pages }: Words): FateView | null =>
  isFate(status) ? { ...pages.fates[status], isUrgent: status === "stolen" } : null;
