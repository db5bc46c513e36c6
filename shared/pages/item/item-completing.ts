import type { PublishedItem } from "../../publication/published.ts";
import { isFate } from "../../terms/states.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { comparisonAddress } from "../compare/compare-page.ts";
import { whatItAdds } from "../listed/wanted-parts.ts";
import type { Link } from "../page.ts";

export interface CompletingView {
  readonly wants: readonly { readonly part: Link; readonly units: string; readonly adds: string }[];
  /** What its own case does not need. */
  readonly spares: readonly { readonly part: Link; readonly units: string }[];
}

/** What would make it whole, the part that adds most first; and what it could give. Of one that is gone, neither. */
export function completingView(item: PublishedItem, { words }: CollectionIndex): CompletingView {
  const { wants, spares, parts, status } = item;
  if (isFate(status)) return { wants: [], spares: [] };
  const { numbers } = words;
  const link = (id: string): Link => ({
    address: `#part-${id}`,
    name: parts.find((part) => part.id === id)?.name ?? id,
  });
  return {
    wants: wants.map((want) => ({
      part: link(want.part),
      units: numbers.count(want.units),
      adds: whatItAdds(item, want, words),
    })),
    spares: spares.map(({ part, units }) => ({ part: link(part), units: numbers.count(units) })),
  };
}

export interface NearestView {
  readonly example: Link;
  readonly likeness: string;
  readonly compared: string;
  /** Where the two stand side by side; an example that is only in the log has no entry to set beside. */
  readonly beside: Link | null;
}

/** The examples most like this one, here or in the log. */
export const nearestView = ({ id, nearest, variant }: PublishedItem, index: CollectionIndex): NearestView[] =>
  nearest.map(({ name, item, likeness, compared }) => ({
    example: {
      address: item === null ? addresses.sightingsOf(variant.id) : addresses.item(item),
      name,
    },
    likeness: index.words.numbers.share(likeness),
    compared: index.words.numbers.count(compared),
    beside:
      item === null
        ? null
        : { address: comparisonAddress(id, item, index), name: index.words.pages.compare.sideBySide },
  }));
