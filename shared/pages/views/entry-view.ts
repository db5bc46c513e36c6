import type { ImageSet } from "../../images/image-set.ts";
import { casePlanThumbnail } from "../../plots/case-plan/case-plan.ts";
import { completenessMark } from "../../plots/completeness-interval.ts";
import type { PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { shareInterval } from "./completeness-words.ts";
import { standingOf } from "./standing-words.ts";

/** An entry of a list: what it is, how complete, how it ranks. */
export interface EntryView {
  readonly id: string;
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
  readonly isAssembled: boolean;
  readonly serial: string | null;
  readonly photo: { readonly image: ImageSet; readonly alt: string } | null;
  /** SVG; beside the photograph, where there is one. */
  readonly plan: string | null;
}

/** Beyond this many entries a picture beside each would weigh more than the list. */
const pictured = 200;

export function entryView(item: PublishedItem, index: CollectionIndex): EntryView {
  const { words, images, itemCount } = index;
  const { pages } = words;
  const { weighted, level } = item.completeness;
  const { rank } = item.rarity;
  const withPicture = itemCount <= pictured;
  const shown = item.photos.find(({ original }) => images.has(original));
  const image = shown && images.get(shown.original);
  return {
    id: item.id,
    item: { address: addresses.item(item.id), name: item.title },
    variant: { address: addresses.variant(item.variant.id), name: item.variant.name },
    verdict: item.identification.verdict,
    verdictWord: pages.verdicts[item.identification.verdict].short,
    complete: weighted && shareInterval(weighted, words),
    mark: weighted && withPicture ? completenessMark(weighted) : null,
    level: item.levels.find(({ id }) => id === level.sure)?.name ?? null,
    rank: rank && pages.catalogue.rankOf(rank.place, rank.of),
    status: standingOf(item, words),
    isAssembled: item.assembled.length > 0,
    serial: item.serial,
    photo: withPicture && shown && image ? { image, alt: shown.alt } : null,
    plan: withPicture ? casePlanThumbnail(item.parts) : null,
  };
}
