import { everyPairUpTo, type ItemComparison } from "../assessments/item-comparison.ts";
import type { Contrast, PublishedComparison } from "./published.ts";

export { everyPairUpTo };

const rows = (contrasts: ReadonlyMap<string, Contrast>) =>
  [...contrasts].map(([id, contrast]) => ({ id, contrast }));

/** Which rows differ is nobody's secret; what stands in them is with the items. */
export const publishComparison = (
  { variant, items, features, parts, likeness, compared }: ItemComparison,
  nameOf: (variant: string) => string,
): PublishedComparison => ({
  variant: { id: variant, name: nameOf(variant) },
  items,
  features: rows(features),
  parts: rows(parts),
  likeness,
  compared,
});
