import type { ListedFamily, ListedItem } from "../../pages/listed/listed-family.ts";
import { replaceWords, wordsAt } from "../../pages/search/word-files.ts";
import type { LiveFiles } from "./live-files.ts";

/** What was made of edited items before the group that they belong to. */
export interface MadeAhead {
  readonly files: LiveFiles;
  /** The families of the group, as lists and search are to show them with these items; null where that is not known. */
  listed: readonly ListedFamily[] | null;
}

/**
 * Listed families with one item as it was made from a slice of its group, and its variant. Null where it has no place in
 * the list yet. What sums up a family waits for the group.
 */
export function listedWith(
  listed: readonly ListedFamily[],
  id: string,
  slice: readonly ListedFamily[],
): readonly ListedFamily[] | null {
  const made = found(slice, id);
  const before = found(listed, id);
  const variant = made?.family.variants.find((each) => each.id === made.item.variant.id);
  if (!made || !variant || before?.item.variant.id !== variant.id) return null;
  const { family, place } = before;
  const listedNow: ListedFamily = {
    ...family,
    items: family.items.with(place, made.item),
    words: replaceWords(family.words, place, wordsAt(made.family.words, made.place)),
    variants: family.variants.map((each) => (each.id === variant.id ? variant : each)),
  };
  return listed.map((each) => (each === family ? listedNow : each));
}

interface PlacedItem {
  readonly item: ListedItem;
  readonly family: ListedFamily;
  /** In the family's list. */
  readonly place: number;
}

function found(listed: readonly ListedFamily[], id: string): PlacedItem | null {
  for (const family of listed) {
    for (const [place, item] of family.items.entries()) if (item.id === id) return { item, family, place };
  }
  return null;
}
