import { everyPairUpTo } from "../publication/publish-comparison.ts";
import type { PublishedComparison, PublishedItem } from "../publication/published.ts";
import { addresses } from "./addresses.ts";
import { catalogueOrder } from "./catalogue-order.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { linkedData } from "./linked-data.ts";
import type { Link, PageHead } from "./page.ts";

/** As a table of distances: a row for each outfit, with one cell for every outfit before it. */
export interface DistanceTable {
  readonly caption: string;
  readonly rows: readonly {
    readonly number: number;
    readonly outfit: Link;
    readonly cells: readonly { readonly pair: Link; readonly likeness: string }[];
  }[];
}

export interface ComparableVariant {
  readonly variant: Link;
  readonly distances: DistanceTable | null;
  /** Of a variant with more examples than a table can hold. */
  readonly many: {
    readonly note: string;
    readonly list: Link;
    readonly pairs: readonly (Link & { readonly likeness: string })[];
  } | null;
}

/** What can be set side by side; with a script, any outfits that the address names. */
export interface ComparisonsPage extends PageHead {
  readonly kind: "comparisons";
  /** Which pairs have a page. */
  readonly limit: string;
  readonly variants: readonly ComparableVariant[];
}

const nearestListed = 12;

export function comparisonsPage(index: CollectionIndex): ComparisonsPage {
  const { collection, words } = index;
  const say = words.pages.compare;
  const ofVariant = new Map<string, PublishedComparison[]>();
  for (const comparison of collection.comparisons) {
    const known = ofVariant.get(comparison.variant.id);
    if (known) known.push(comparison);
    else ofVariant.set(comparison.variant.id, [comparison]);
  }
  return {
    kind: "comparisons",
    address: addresses.comparisons,
    title: say.title,
    description: say.description,
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.items, name: words.pages.catalogue.title },
    ],
    linkedData: linkedData(collection, "CollectionPage", addresses.comparisons, {
      name: say.title,
      description: say.description,
    }),
    limit: say.limit(everyPairUpTo),
    variants: catalogueOrder(index).flatMap(({ variant, items }) => {
      if (items.length < 2) return [];
      const comparisons = ofVariant.get(variant.id) ?? [];
      const isWhole = comparisons.length === (items.length * (items.length - 1)) / 2;
      return [
        {
          variant: { address: addresses.variant(variant.id), name: variant.name },
          distances: isWhole ? distanceTable(variant.name, items, comparisons, index) : null,
          many: isWhole
            ? null
            : {
                note: say.tooMany(items.length, variant.name),
                list: { address: addresses.itemsOfVariant(variant.id), name: say.tooManyList },
                pairs: nearestPairs(comparisons, index),
              },
        },
      ];
    }),
  };
}

const likenessWord = (likeness: number | null, { words }: CollectionIndex): string =>
  likeness === null ? "—" : words.numbers.share(likeness);

function distanceTable(
  name: string,
  items: readonly PublishedItem[],
  comparisons: readonly PublishedComparison[],
  index: CollectionIndex,
): DistanceTable {
  const say = index.words.pages.compare;
  const found = new Map(comparisons.map((comparison) => [comparison.items.join(" "), comparison]));
  return {
    caption: say.distancesCaption(name),
    rows: items.map((item, at) => ({
      number: at + 1,
      outfit: { address: addresses.item(item.id), name: item.title },
      cells: items.slice(0, at).flatMap((other) => {
        const comparison = found.get(`${other.id} ${item.id}`) ?? found.get(`${item.id} ${other.id}`);
        if (!comparison) return [];
        return [
          {
            pair: {
              address: addresses.comparison(...comparison.items),
              name: say.pair(item.title, other.title),
            },
            likeness: likenessWord(comparison.likeness, index),
          },
        ];
      }),
    })),
  };
}

const nearestPairs = (comparisons: readonly PublishedComparison[], index: CollectionIndex) =>
  [...comparisons]
    .sort((a, b) => (b.likeness ?? 0) - (a.likeness ?? 0))
    .slice(0, nearestListed)
    .map(({ items, likeness }) => {
      const [first, second] = items.map((id) => index.items.get(id)?.title ?? id);
      return {
        address: addresses.comparison(...items),
        name: index.words.pages.compare.pair(first ?? items[0], second ?? items[1]),
        likeness: likenessWord(likeness, index),
      };
    });
