import { type DateBounds, dateBounds } from "./date-bounds.ts";

/** What one member of a set says of its first and last day; infinite for the dots at either end. */
export type SetMember = Omit<DateBounds, "precision">;

const FROM_EVER: SetMember = { earliest: -Infinity, latest: -Infinity, uncertain: false, approximate: false };
const FOR_EVER: SetMember = { earliest: Infinity, latest: Infinity, uncertain: false, approximate: false };

/**
 * The members of an EDTF set, from what stands between its brackets: dates, the two ends of every run
 * (`1670..1672`), and an infinite one for dots at the beginning or end ("on or before", "on or after").
 * Null where it is no set, where the ends of a run differ in precision, or where a run goes backwards.
 *
 * Source  Library of Congress, EDTF (4 February 2019), "Set representation"
 */
export function setMembers(content: string): readonly SetMember[] | null {
  const members: SetMember[] = [];
  if (content.startsWith("..")) members.push(FROM_EVER);
  if (content.endsWith("..")) members.push(FOR_EVER);
  for (const item of content.replace(/^\.\.|\.\.$/g, "").split(",")) {
    const ends = item.split("..").map(dateBounds);
    const [first, last = first] = ends;
    if (!first || !last || ends.length > 2) return null;
    if (first.precision !== last.precision || first.earliest > last.latest) return null;
    members.push(first, last);
  }
  return members;
}
