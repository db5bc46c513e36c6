import type { PublishedPart } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";

/** How the case plan is to be read: drawn by the reference, with what that leaves out along the front, or laid out by weight. */
export function planNote(parts: readonly PublishedPart[], { pages: { item: say } }: Words): string {
  const drawn = parts.filter(({ plan }) => plan !== null).length;
  if (drawn * 2 <= parts.length) return say.planNoteByWeight;
  return drawn < parts.length ? `${say.planNoteDrawn} ${say.planNoteLoose}` : say.planNoteDrawn;
}
