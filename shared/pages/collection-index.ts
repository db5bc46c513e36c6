import type { Images } from "../images/image-set.ts";
import type {
  PublishedCollection,
  PublishedFamily,
  PublishedItem,
  PublishedSource,
  PublishedVariant,
} from "../publication/published.ts";
import type { Words } from "../words/words.ts";

/** The collection as a view looks things up in it. */
export interface CollectionIndex {
  readonly collection: PublishedCollection;
  readonly words: Words;
  readonly images: Images;
  readonly items: ReadonlyMap<string, PublishedItem>;
  readonly variants: ReadonlyMap<string, PublishedVariant>;
  readonly families: ReadonlyMap<string, PublishedFamily>;
  readonly sources: ReadonlyMap<string, PublishedSource>;
}

const byId = <Entry extends { readonly id: string }>(entries: readonly Entry[]): ReadonlyMap<string, Entry> =>
  new Map(entries.map((entry) => [entry.id, entry]));

export const indexCollection = (
  collection: PublishedCollection,
  words: Words,
  images: Images,
): CollectionIndex => ({
  collection,
  words,
  images,
  items: byId(collection.items),
  variants: byId(collection.variants),
  families: byId(collection.families),
  sources: byId(collection.sources),
});
