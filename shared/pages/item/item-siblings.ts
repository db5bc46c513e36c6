import type { PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { comparisonAddress } from "../compare/compare-page.ts";
import { contradictionOf } from "../views/contradiction.ts";
import type { ItemPage } from "./item-page.ts";

/** A line for each is enough as long as they are few. */
const listedUpTo = 12;

/** The other outfits of the same variant, each with where the two are set side by side. */
export function siblingsOf({ id, variant }: PublishedItem, index: CollectionIndex): ItemPage["siblings"] {
  const all = index.variants.get(variant.id)?.items ?? [];
  if (all.length > listedUpTo) return [];
  return all
    .filter((other) => other.id !== id)
    .map((other) => ({
      outfit: { address: addresses.item(other.id), name: other.name },
      verdict: contradictionOf(index.items.get(other.id), index.words),
      beside: {
        address: comparisonAddress(id, other.id, index),
        name: index.words.pages.compare.sideBySide,
      },
    }));
}
