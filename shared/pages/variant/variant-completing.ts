import type { PublishedVariant } from "../../publication/published.ts";
import { shareBounds } from "../../words/share-bounds.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";

/** What could be completed here out of spare parts, should their owner wish it. */
export interface ReallocationView {
  readonly moves: readonly {
    readonly part: Link;
    readonly units: string;
    readonly from: Link;
    readonly to: Link;
  }[];
  readonly items: readonly { readonly item: Link; readonly before: string; readonly after: string }[];
}

export function reallocationView(
  { reallocation, parts }: PublishedVariant,
  { words, items }: CollectionIndex,
): ReallocationView | null {
  if (!reallocation || reallocation.moves.length === 0) return null;
  const { count } = words.numbers;
  const itemLink = (id: string): Link => ({
    address: addresses.item(id),
    name: items.get(id)?.title ?? id,
  });
  return {
    moves: reallocation.moves.map(({ part, units, from, to }) => ({
      part: { address: `#part-${part}`, name: parts.find(({ id }) => id === part)?.name ?? part },
      units: count(units),
      from: itemLink(from),
      to: itemLink(to),
    })),
    items: reallocation.items.map(({ item, before, after }) => {
      // As certain as the page of the outfit has it.
      const high = items.get(item)?.completeness.weighted?.high ?? 1;
      const certain = (low: number) => shareBounds({ low, high }, words.numbers).certain;
      return { item: itemLink(item), before: certain(before), after: certain(after) };
    }),
  };
}
