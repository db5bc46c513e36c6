import type { PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";

/** Whether the reference lists parts, of which this one was issued none: then nothing can be missing, or amiss. */
export const isNoneIssued = ({ parts }: Pick<PublishedItem, "parts">): boolean =>
  parts.length > 0 && parts.every(({ units }) => units.expected === 0);

/** What stands where no part is known to be missing: that says something only of parts that somebody has looked for. */
export function noneMissing(item: PublishedItem, words: Words): string {
  const { parts, completeness } = item;
  const say = words.pages.item;
  const { substitutes, unverified, unexamined } = completeness;
  const issued = parts.filter(({ units }) => units.expected > 0);
  if (isNoneIssued(item)) return say.nothingIssued;
  if (issued.length > 0 && issued.every(({ units }) => units.unexamined >= units.expected))
    return say.nothingExamined;
  return substitutes.length + unverified.length + unexamined.length > 0
    ? say.nothingMissingOfExamined
    : say.nothingMissing;
}
