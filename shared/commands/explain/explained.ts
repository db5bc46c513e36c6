import type {
  PublishedFamily,
  PublishedItem,
  PublishedItemPart,
  PublishedVariant,
} from "../../publication/published.ts";

/** What a report of one item is made from. */
export interface Explained {
  readonly item: PublishedItem;
  readonly variant: PublishedVariant;
  readonly family: PublishedFamily | undefined;
  readonly groups: readonly (readonly PublishedItemPart[])[];
  /** The words of a class of the collection's scale. */
  readonly classWords: (id: string) => string;
  readonly scaleName: string | null;
}
