import { addresses } from "./addresses.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { linkedData } from "./linked-data.ts";
import type { Link, PageHead } from "./page.ts";
import { type ReallocationView, reallocationView } from "./variant-completing.ts";

/** A part of an item: wanted there, or to spare. */
interface PartOfItem {
  readonly part: Link;
  readonly item: Link;
  readonly variant: Link;
  readonly units: string;
}

/** What the whole collection lacks and could give: the list that somebody carries to a fair. */
export interface WantsPage extends PageHead {
  readonly kind: "wants";
  /** What would add most comes first. */
  readonly wanted: readonly (PartOfItem & { readonly adds: string })[];
  readonly spare: readonly PartOfItem[];
  readonly completed: readonly { readonly variant: Link; readonly view: ReallocationView }[];
}

export function wantsPage(index: CollectionIndex): WantsPage {
  const { collection, words } = index;
  const { numbers, pages } = words;
  const say = pages.wants;
  const ofItem = (item: (typeof collection.items)[number], id: string, units: number): PartOfItem => ({
    part: {
      address: `${addresses.item(item.id)}#part-${id}`,
      name: item.parts.find((part) => part.id === id)?.name ?? id,
    },
    item: { address: addresses.item(item.id), name: item.title },
    variant: { address: addresses.variant(item.variant.id), name: item.variant.name },
    units: numbers.count(units),
  });
  return {
    kind: "wants",
    address: addresses.wants,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.wants, { name: say.title }),
    wanted: collection.items
      .flatMap((item) => item.wants.map((want) => ({ item, want })))
      .sort((a, b) => b.want.gain - a.want.gain)
      .map(({ item, want }) => ({ ...ofItem(item, want.part, want.units), adds: numbers.share(want.gain) })),
    spare: collection.items.flatMap((item) =>
      item.spares.map(({ part, units }) => ofItem(item, part, units)),
    ),
    completed: collection.variants.flatMap((variant) => {
      const view = reallocationView(variant, index);
      if (!view) return [];
      const address = addresses.variant(variant.id);
      // The moves name parts of the variant's own page.
      const moves = view.moves.map((move) => ({
        ...move,
        part: { ...move.part, address: `${address}${move.part.address}` },
      }));
      return [{ variant: { address, name: variant.name }, view: { ...view, moves } }];
    }),
  };
}
