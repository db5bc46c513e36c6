import type { Media } from "../images/media.ts";
import { type Lookup, lookupOf } from "../publication/lookup.ts";
import type { PublishedCollection } from "../publication/published.ts";
import type { Words } from "../words/words.ts";
import { type ShortReference, shortReferences } from "./citation/source-reference.ts";

/** The collection as a view looks things up in it. */
export interface CollectionIndex extends Lookup, Media {
  readonly words: Words;
  /** How each source is cited in short. */
  readonly shortReferences: ReadonlyMap<string, ShortReference>;
  /** Of each data file, and of the figures in that of a variant, what tells this version from others; by address. */
  readonly versions: ReadonlyMap<string, string>;
  /** The pairs of items that have a page, by their ids: "a b". */
  readonly pairs: ReadonlySet<string>;
  /** How many items the whole collection has, of which these may be some. */
  readonly itemCount: number;
}

export const indexCollection = (
  collection: PublishedCollection,
  words: Words,
  { images, previewPictures, recordings }: Media,
  versions: CollectionIndex["versions"],
  itemCount = collection.items.length,
): CollectionIndex => ({
  ...lookupOf(collection),
  words,
  images,
  previewPictures,
  recordings,
  shortReferences: shortReferences(collection.sources, words),
  versions,
  pairs: new Set(collection.comparisons.map(({ items }) => items.join(" "))),
  itemCount,
});
