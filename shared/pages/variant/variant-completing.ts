import type { PublishedVariant } from "../../publication/published.ts";
import { shareBounds } from "../../words/share-bounds.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { contradictionOf } from "../views/contradiction.ts";

/** An outfit, with a word where the evidence speaks against its variant. */
interface Moving extends Link {
  readonly doubt: string | null;
}

/** What could be completed here out of spare parts, should their owner wish it. */
export interface ReallocationView {
  readonly moves: readonly {
    readonly part: Link;
    readonly units: string;
    readonly from: Moving;
    readonly to: Moving;
  }[];
  readonly items: readonly { readonly item: Moving; readonly before: string; readonly after: string }[];
}

export function reallocationView(
  { reallocation, parts }: PublishedVariant,
  { words, items }: CollectionIndex,
): ReallocationView | null {
  if (!reallocation || reallocation.moves.length === 0) return null;
  const { count } = words.numbers;
  const itemLink = (id: string): Moving => ({
    address: addresses.item(id),
    name: items.get(id)?.title ?? id,
    doubt: contradictionOf(items.get(id), words),
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
