import type { ListedFamily } from "../../pages/listed/listed-family.ts";
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
  const item = slice.flatMap(({ items }) => items).find((each) => each.id === id);
  const variant = slice.flatMap(({ variants }) => variants).find((each) => each.id === item?.variant.id);
  const isOfVariant = listed.some(({ items }) =>
    items.some((each) => each.id === id && each.variant.id === variant?.id),
  );
  if (!item || !variant || !isOfVariant) return null;
  return listed.map((family) => ({
    ...family,
    items: family.items.map((each) => (each.id === id ? item : each)),
    variants: family.variants.map((each) => (each.id === variant.id ? variant : each)),
  }));
}
