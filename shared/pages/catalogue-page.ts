import type { ImageSet } from "../images/image-set.ts";
import { casePlanThumbnail } from "../plots/case-plan.ts";
import { completenessMark } from "../plots/completeness-interval.ts";
import type { PublishedItem } from "../publication/published.ts";
import { addresses } from "./addresses.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { shareInterval } from "./completeness-view.ts";
import { linkedData } from "./linked-data.ts";
import type { Link, PageHead } from "./page.ts";

/** An entry of a list: what it is, how complete, how it ranks. */
export interface EntryView {
  readonly item: Link;
  readonly variant: Link;
  readonly verdict: PublishedItem["identification"]["verdict"];
  readonly verdictWord: string;
  readonly complete: string | null;
  /** SVG. */
  readonly mark: string | null;
  readonly level: string | null;
  readonly rank: string | null;
  readonly status: string;
  readonly serial: string | null;
  readonly photo: { readonly image: ImageSet; readonly alt: string } | null;
  /** SVG; in place of a photograph. */
  readonly plan: string | null;
}

export interface CataloguePage extends PageHead {
  readonly kind: "catalogue";
  readonly lead: string;
  readonly groups: readonly { readonly variant: Link; readonly entries: readonly EntryView[] }[];
  readonly files: readonly Link[];
}

/** Beyond this many entries a picture beside each would weigh more than the list. */
const pictured = 200;

export function entryView(item: PublishedItem, index: CollectionIndex): EntryView {
  const { words, images, collection } = index;
  const { pages } = words;
  const { weighted, level } = item.completeness;
  const { rank } = item.rarity;
  const withPicture = collection.items.length <= pictured;
  const shown = item.photos.find(({ original }) => images.has(original));
  const image = shown && images.get(shown.original);
  return {
    item: { address: addresses.item(item.id), name: item.title },
    variant: { address: addresses.variant(item.variant.id), name: item.variant.name },
    verdict: item.identification.verdict,
    verdictWord: pages.verdicts[item.identification.verdict].short,
    complete: weighted && shareInterval(weighted, words),
    mark: weighted && withPicture ? completenessMark(weighted) : null,
    level: item.levels.find(({ id }) => id === level.sure)?.name ?? null,
    rank: rank && pages.catalogue.rankOf(rank.place, rank.of),
    status: pages.statuses[item.status] ?? item.status,
    serial: item.serial,
    photo: withPicture && shown && image ? { image, alt: shown.alt } : null,
    plan: withPicture && !image ? casePlanThumbnail(item.parts) : null,
  };
}

export function cataloguePage(index: CollectionIndex): CataloguePage {
  const { collection, words } = index;
  const say = words.pages.catalogue;
  const { items } = collection;
  return {
    kind: "catalogue",
    address: addresses.items,
    title: say.title,
    description: say.description(items.length),
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.items, {
      name: say.title,
      description: say.description(items.length),
    }),
    lead: items.length === 0 ? say.empty : say.lead(items.length),
    groups: collection.variants.flatMap((variant) => {
      const entries = items.filter((item) => item.variant.id === variant.id);
      return entries.length === 0
        ? []
        : [
            {
              variant: { address: addresses.variant(variant.id), name: variant.name },
              entries: entries.map((item) => entryView(item, index)),
            },
          ];
    }),
    files: [
      { address: addresses.itemsCsv, name: words.pages.site.table },
      { address: addresses.collectionData, name: words.pages.site.allData },
    ],
  };
}
