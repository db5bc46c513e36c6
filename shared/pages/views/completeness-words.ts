import type { PublishedItem } from "../../publication/published.ts";
import { isMain } from "../../terms/states.ts";
import { shareBounds } from "../../words/share-bounds.ts";
import type { Words } from "../../words/words.ts";

export function shareInterval(bounds: { low: number; high: number }, { interval, numbers }: Words): string {
  const { certain, possible } = shareBounds(bounds, numbers);
  return possible === null ? certain : interval(certain, possible);
}

export const unitsInWords = (
  { low, high, expected }: { low: number; high: number; expected: number },
  words: Words,
) =>
  words.pages.completeness.units(
    words.numbers.quantity(low),
    words.numbers.quantity(high),
    words.numbers.count(expected),
  );

/** Its place by completeness, among how many. */
export const placePhrase = (
  { place, of, sharing }: NonNullable<PublishedItem["rarity"]["rank"]>,
  { numbers, pages }: Words,
): string => pages.item.place(numbers.count(place), of, sharing > 1 ? numbers.count(sharing) : null);

/** Why it has no completeness: the reference asks for nothing, or this one was issued nothing of what it asks for. */
export const noCompleteness = ({ parts }: Pick<PublishedItem, "parts">, words: Words): string => {
  const { noneIssued, noReference } = words.pages.completeness;
  return parts.some(({ standing }) => isMain(standing)) ? noneIssued : noReference;
};

type Levelled = Pick<PublishedItem, "levels"> & {
  readonly completeness: Pick<PublishedItem["completeness"], "level">;
};

/** The level where it stands by itself. */
export const levelSentence = (item: Levelled, words: Words): string =>
  words.pages.capital(levelPhrase(item, words));

/** The level within a sentence: what is sure, and what the doubts could still make of it. */
export function levelPhrase({ completeness, levels }: Levelled, words: Words): string {
  const say = words.pages.completeness;
  const nameOf = (id: string | null) => levels.find((level) => level.id === id)?.name ?? null;
  const sure = nameOf(completeness.level.sure);
  const possible = nameOf(completeness.level.possible);
  if (sure === possible) return sure === null ? say.noLevel : say.levelBoth(sure);
  const first = sure === null ? say.levelNone : say.levelSure(sure);
  return possible === null ? first : `${first}; ${say.levelPossible(possible)}`;
}
