import type { PublishedPart } from "../publication/published.ts";
import type { Words } from "../words/words.ts";

/** How the case plan is to be read: drawn by the reference, or laid out by weight. */
export const planNote = (parts: readonly PublishedPart[], { pages }: Words): string =>
  parts.filter(({ plan }) => plan !== null).length * 2 > parts.length
    ? pages.item.planNoteDrawn
    : pages.item.planNoteByWeight;
