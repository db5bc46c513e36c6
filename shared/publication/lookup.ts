import type {
  PublishedCollection,
  PublishedFamily,
  PublishedItem,
  PublishedSource,
  PublishedVariant,
} from "./published.ts";

/** What is published, by id. */
export interface Lookup {
  readonly collection: PublishedCollection;
  readonly items: ReadonlyMap<string, PublishedItem>;
  readonly variants: ReadonlyMap<string, PublishedVariant>;
  readonly families: ReadonlyMap<string, PublishedFamily>;
  readonly sources: ReadonlyMap<string, PublishedSource>;
}

const byId = <Entry extends { readonly id: string }>(entries: readonly Entry[]): ReadonlyMap<string, Entry> =>
  new Map(entries.map((entry) => [entry.id, entry]));

export const lookupOf = (collection: PublishedCollection): Lookup => ({
  collection,
  items: byId(collection.items),
  variants: byId(collection.variants),
  families: byId(collection.families),
  sources: byId(collection.sources),
});
