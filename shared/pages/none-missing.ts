import type { PublishedItem } from "../publication/published.ts";
import type { Words } from "../words/words.ts";

/** What stands where no part is known to be missing: that says something only of parts that somebody has looked for. */
export function noneMissing({ parts, completeness }: PublishedItem, words: Words): string {
  const say = words.pages.item;
  const { substitutes, unverified, unexamined } = completeness;
  if (parts.length > 0 && parts.every(({ units }) => units.unexamined >= units.expected))
    return say.nothingExamined;
  return substitutes.length + unverified.length + unexamined.length > 0
    ? say.nothingMissingOfExamined
    : say.nothingMissing;
}
