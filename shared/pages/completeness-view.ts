import type { PublishedItem, StandingCompleteness } from "../publication/published.ts";
import type { Words } from "../words/words.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { levelSentence, noCompleteness, shareInterval, unitsInWords } from "./completeness-words.ts";
import { drawing } from "./drawings.ts";

export interface CompletenessView {
  /** "81% to 84%"; null where there is nothing to be complete by. */
  readonly weighted: string | null;
  /** Why there is nothing, where there is not. */
  readonly none: string;
  readonly counted: string | null;
  readonly level: string;
  readonly consumable: string | null;
  readonly optional: string | null;
  /** SVG. */
  readonly plot: string | null;
}

const both = (standing: StandingCompleteness | null, words: Words): string | null =>
  standing && `${unitsInWords(standing.counted, words)}, ${shareInterval(standing.weighted, words)}`;

export function completenessView(item: PublishedItem, index: CollectionIndex): CompletenessView {
  const { words } = index;
  const { weighted, counted, consumable, optional } = item.completeness;
  return {
    weighted: weighted && shareInterval(weighted, words),
    none: noCompleteness(item, words),
    counted: counted && unitsInWords(counted, words),
    level: levelSentence(item, words),
    consumable: both(consumable, words),
    optional: both(optional, words),
    plot: drawing({ kind: "item", item, plot: "completeness" }, index, { idPrefix: "completeness" }),
  };
}
