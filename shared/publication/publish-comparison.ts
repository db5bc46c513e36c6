import { everyPairUpTo, type ItemPair } from "../assessments/item-pair.ts";
import type { Contrast, PublishedPair } from "./published.ts";

export { everyPairUpTo };

const rows = (contrasts: ReadonlyMap<string, Contrast>) =>
  [...contrasts].map(([id, contrast]) => ({ id, contrast }));

/** Which rows differ is nobody's secret; what stands in them is with the items. */
export const publishComparison = (
  { variant, items, features, parts, likeness, compared }: ItemPair,
  nameOf: (variant: string) => string,
): PublishedPair => ({
  variant: { id: variant, name: nameOf(variant) },
  items,
  features: rows(features),
  parts: rows(parts),
  likeness,
  compared,
});
