import type { PublishedItem, PublishedVariant } from "../publication/published.ts";
import type { CollectionIndex } from "./collection-index.ts";

export interface VariantItems {
  readonly variant: PublishedVariant;
  readonly items: readonly PublishedItem[];
}

/** The order of the catalogue: by variant, as the families have them, and within one by id. Without the empty ones. */
export function catalogueOrder({ collection }: Pick<CollectionIndex, "collection">): VariantItems[] {
  const found = new Map<string, PublishedItem[]>();
  for (const item of collection.items) {
    const known = found.get(item.variant.id);
    if (known) known.push(item);
    else found.set(item.variant.id, [item]);
  }
  return collection.variants.flatMap((variant) => {
    const items = found.get(variant.id);
    return items ? [{ variant, items }] : [];
  });
}
