import type { PublishedItem, PublishedPart, StandingCompleteness } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import type { CollectionIndex } from "../collection-index.ts";
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

type Standing = PublishedPart["standing"];

/** Where substitutes are among the units of these standings it says how they are counted, so that halves explain themselves. */
function countedInWords(
  { parts }: PublishedItem,
  standings: readonly Standing[],
  counted: StandingCompleteness["counted"],
  words: Words,
): string {
  const units = unitsInWords(counted, words);
  const hasSubstitute = parts.some(
    (part) =>
      standings.includes(part.standing) &&
      part.units.substitute > 0 &&
      part.units.present < part.units.expected,
  );
  return hasSubstitute ? words.pages.completeness.withSubstitutes(units) : units;
}

export function completenessView(item: PublishedItem, index: CollectionIndex): CompletenessView {
  const { words } = index;
  const { weighted, counted, consumable, optional } = item.completeness;
  const apart = (standing: Standing, of: StandingCompleteness | null) =>
    of &&
    words.pages.completeness.apartByWeight(
      countedInWords(item, [standing], of.counted, words),
      shareInterval(of.weighted, words),
    );
  return {
    weighted: weighted && shareInterval(weighted, words),
    none: noCompleteness(item, words),
    counted: counted && countedInWords(item, ["core", "issued"], counted, words),
    level: levelSentence(item, words),
    consumable: apart("consumable", consumable),
    optional: apart("optional", optional),
    plot: drawing({ kind: "item", item, plot: "completeness" }, index, { idPrefix: "completeness" }),
  };
}
