import { everyPairUpTo } from "../../publication/publish-comparison.ts";
import type { PublishedItem, PublishedPair, PublishedVariant } from "../../publication/published.ts";
import { nearerFirst } from "../../statistics/nearer-first.ts";
import { addresses } from "../addresses/addresses.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { Link, PageHead } from "../page.ts";
import { comparisonAddress } from "./compare-page.ts";

/** As a table of distances: a row for each outfit, with one cell for every outfit before it. */
export interface DistanceTable {
  readonly caption: string;
  readonly rows: readonly {
    readonly number: number;
    readonly outfit: Link;
    readonly cells: readonly {
      readonly pair: Link;
      readonly likeness: string;
      /** How many features and parts it rests on. */
      readonly comparedOn: string;
    }[];
  }[];
}

export interface ComparableVariant {
  readonly id: string;
  readonly variant: Link;
  readonly distances: DistanceTable | null;
  /** Of a variant with more examples than a table can hold. */
  readonly many: {
    readonly note: string;
    readonly list: Link;
    readonly pairs: readonly (Link & { readonly likeness: string })[];
  } | null;
}

/** Where the examples of a variant stand on the page. */
export const comparedPlace = (variant: string): string => `of-${variant}`;

/** What can be set side by side; with a script, any outfits that the address names. */
export interface ComparisonsPage extends PageHead {
  readonly kind: "comparisons";
  /** Which pairs have a page. */
  readonly limit: string;
  readonly variants: readonly ComparableVariant[];
}

const nearestListed = 12;

export function comparisonsPage({ collection, words, listed }: CatalogueIndex): ComparisonsPage {
  const say = words.pages.compare;
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
    variants: listed.flatMap(({ variants }) => variants.flatMap(({ compared }) => compared ?? [])),
  };
}

/** How the examples of a variant can be compared; null where there are not two. */
export function comparableVariant(
  variant: PublishedVariant,
  items: readonly PublishedItem[],
  index: CollectionIndex,
): ComparableVariant | null {
  if (items.length < 2) return null;
  const say = index.words.pages.compare;
  const comparisons = index.collection.comparisons.filter(({ variant: of }) => of.id === variant.id);
  const link = { address: addresses.variant(variant.id), name: variant.name };
  if (comparisons.length > 0) {
    const distances = distanceTable(variant.name, items, comparisons, index);
    return { id: variant.id, variant: link, distances, many: null };
  }
  const many = {
    note: say.tooMany(items.length, variant.name),
    list: { address: addresses.itemsOfVariant(variant.id), name: say.tooManyList },
    pairs: nearestPairs(items, index),
  };
  return { id: variant.id, variant: link, distances: null, many };
}

const likenessWord = (likeness: number | null, { words }: CollectionIndex): string =>
  likeness === null ? "—" : words.numbers.share(likeness);

function distanceTable(
  name: string,
  items: readonly PublishedItem[],
  comparisons: readonly PublishedPair[],
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
            comparedOn: index.words.numbers.count(
              comparison.compared.features.length + comparison.compared.parts.length,
            ),
          },
        ];
      }),
    })),
  };
}

/** Of more examples than a table can hold, those most alike; the reader's browser sets them side by side. */
function nearestPairs(items: readonly PublishedItem[], index: CollectionIndex) {
  const say = index.words.pages.compare;
  const pairs = new Map<string, Link & { readonly likeness: number; readonly compared: number }>();
  for (const { id, title, nearest } of items) {
    for (const { item, name, likeness, compared } of nearest) {
      if (item === null) continue;
      const [first, second] = id < item ? [id, item] : [item, id];
      const address = comparisonAddress(first, second, index);
      pairs.set(address, {
        address,
        name: id < item ? say.pair(title, name) : say.pair(name, title),
        likeness,
        compared,
      });
    }
  }
  const order = nearerFirst([...pairs.values()]);
  return [...pairs.values()]
    .sort((a, b) => order(a, b) || (a.address < b.address ? -1 : 1))
    .slice(0, nearestListed)
    .map(({ address, name, likeness }) => ({ address, name, likeness: likenessWord(likeness, index) }));
}
