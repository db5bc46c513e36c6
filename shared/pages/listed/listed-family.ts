import type { ImageSet } from "../../images/image-set.ts";
import type { PublishedItem } from "../../publication/published.ts";
import type { CitedPages } from "../citation/cited-pages.ts";
import type { ComparableVariant } from "../compare/comparisons-page.ts";
import type { Link } from "../page.ts";
import type { IndexedVariant, Named, WordFile } from "../search/search-index.ts";
import type { SightingsIndexPage } from "../variant/sightings-page.ts";
import type { ReallocationView } from "../variant/variant-completing.ts";
import type { EntryView } from "../views/entry-view.ts";
import type { MethodExamples } from "./method-examples.ts";
import type { SearchedItem } from "./searched-item.ts";
import type { WantedParts } from "./wanted-parts.ts";

/** As much of an item as the pages of the whole collection print: lists, search, tables, feed. */
export interface ListedItem {
  readonly id: string;
  readonly title: string;
  readonly variant: Named;
  readonly entry: EntryView;
  /** The level that it certainly reaches. */
  readonly level: Named | null;
  readonly status: PublishedItem["status"];
  readonly verdict: EntryView["verdict"];
  readonly hazards: readonly Named[];
  readonly updated: string | null;
  /** What was changed then, where that is told. */
  readonly change: string | null;
  readonly formerly: readonly string[];
  /** Its line of `/data/items.csv`. */
  readonly row: string;
  /** Its entry in `/data/collection.json`. */
  readonly data: unknown;
  readonly searched: SearchedItem;
}

export interface ListedVariant {
  readonly id: string;
  readonly name: string;
  readonly issued: string | null;
  /** How many are here, and how many sightings the log has. */
  readonly items: number;
  readonly sightings: number;
  /** In words. */
  readonly survive: string;
  readonly log: SightingsIndexPage["variants"][number];
  readonly data: unknown;
  readonly searched: Omit<IndexedVariant, "family" | "survive">;
  readonly parts: readonly Named[];
  readonly compared: ComparableVariant | null;
  readonly completed: ReallocationView | null;
}

/** One outfit laid open. */
export interface OpenedItem {
  readonly item: Link;
  readonly photo: { readonly image: ImageSet; readonly alt: string } | null;
  /** SVG. */
  readonly plan: string;
  readonly note: string;
  readonly isGone: boolean;
  readonly isSound: boolean;
  readonly certain: number;
}

/**
 * A family as the pages of the whole collection see it. They are made from this and from nothing else of it, so that
 * a family need not be at hand for them, nor be assessed again where nothing of it has changed.
 */
export interface ListedFamily {
  readonly id: string;
  readonly name: string;
  readonly maker: string | null;
  /** HTML: what the list of families says of it. */
  readonly text: string;
  readonly variants: readonly ListedVariant[];
  /** In the order of the catalogue: by variant, within one by id. */
  readonly items: readonly ListedItem[];
  /** Of the texts of these. */
  readonly words: WordFile;
  readonly opened: OpenedItem | null;
  readonly wanted: WantedParts;
  readonly spare: WantedParts;
  readonly cited: CitedPages;
  readonly examples: MethodExamples;
}
