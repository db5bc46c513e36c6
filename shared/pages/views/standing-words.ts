import type { PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";

/**
 * How an outfit stands: in the collection, offered, sold. One that was made whole out of another case is called
 * assembled wherever it is shown.
 */
export const standingInWords = (
  { status, assembled }: { readonly status: PublishedItem["status"]; readonly assembled: boolean },
  { pages }: Words,
): string => {
  const standing = pages.statuses[status];
  return assembled ? `${standing}, ${pages.assembled}` : standing;
};

export const standingOf = ({ status, assembled }: PublishedItem, words: Words): string =>
  standingInWords({ status, assembled: assembled.length > 0 }, words);
