import type { PublishedItem, StandingCompleteness } from "../publication/published.ts";
import type { Words } from "../words/words.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { drawing } from "./drawings.ts";

export interface CompletenessView {
  /** "81% to 84%"; null where the reference lists nothing to be complete by. */
  readonly weighted: string | null;
  readonly counted: string | null;
  readonly level: string;
  readonly consumable: string | null;
  readonly optional: string | null;
  /** SVG. */
  readonly plot: string | null;
}

const rounded = (value: number, words: Words): string =>
  Number.isInteger(value) ? words.numbers.count(value) : words.numbers.measure(value);

export const shareInterval = (bounds: { low: number; high: number }, { interval, numbers }: Words): string =>
  interval(numbers.share(bounds.low), numbers.share(bounds.high));

const unitsOf = ({ low, high, expected }: { low: number; high: number; expected: number }, words: Words) =>
  words.pages.completeness.units(rounded(low, words), rounded(high, words), words.numbers.count(expected));

const both = (standing: StandingCompleteness | null, words: Words): string | null =>
  standing && `${unitsOf(standing.counted, words)}, ${shareInterval(standing.weighted, words)}`;

/** The level as one sentence: what is sure, and what the doubts could still make of it. */
export function levelSentence(
  { completeness, levels }: Pick<PublishedItem, "completeness" | "levels">,
  words: Words,
): string {
  const say = words.pages.completeness;
  const nameOf = (id: string | null) => levels.find((level) => level.id === id)?.name ?? null;
  const sure = nameOf(completeness.level.sure);
  const possible = nameOf(completeness.level.possible);
  if (sure === possible) return sure === null ? words.pages.capital(say.noLevel) : say.levelBoth(sure);
  const first = sure === null ? say.levelNone : say.levelSure(sure);
  return possible === null ? first : `${first}; ${say.levelPossible(possible)}`;
}

export function completenessView(item: PublishedItem, index: CollectionIndex): CompletenessView {
  const { words } = index;
  const { weighted, counted, consumable, optional } = item.completeness;
  return {
    weighted: weighted && shareInterval(weighted, words),
    counted: counted && unitsOf(counted, words),
    level: levelSentence(item, words),
    consumable: both(consumable, words),
    optional: both(optional, words),
    plot: drawing({ kind: "item", item, plot: "completeness" }, index, { idPrefix: "completeness" }),
  };
}
