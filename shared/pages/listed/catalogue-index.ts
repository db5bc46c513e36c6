import type { CollectionIndex } from "../collection-index.ts";
import type { ListedFamily } from "./listed-family.ts";

/**
 * What a page of the whole collection is made from. `collection` holds the settings, the articles and the sources; of
 * families, variants and items only those that some text of the collection's own takes figures from.
 */
export interface CatalogueIndex extends CollectionIndex {
  /** Every family, in order. */
  readonly listed: readonly ListedFamily[];
}
