import { completenessMark } from "../../plots/completeness-interval.ts";
import type { PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { absoluteAddress } from "../citation/linked-data.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link, PageHead } from "../page.ts";
import { survivorsInBrief } from "../variant/variant-rarity.ts";
import { shareInterval, unitsInWords } from "../views/completeness-words.ts";
import { drawing } from "../views/drawings.ts";
import { missingParts } from "../views/missing-parts.ts";
import { noneMissing } from "../views/none-missing.ts";

/** A sheet to be printed and stood beside the piece. */
export interface DisplayCardPage extends PageHead {
  readonly kind: "card";
  readonly item: Link;
  readonly variant: string;
  readonly verdict: { readonly id: PublishedItem["identification"]["verdict"]; readonly word: string };
  /** SVG. */
  readonly plan: string | null;
  /** SVG. */
  readonly mark: string | null;
  readonly complete: string | null;
  /** Parts out of another case. */
  readonly assembled: string | null;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  /** What in it can hurt, by name. */
  readonly hazards: readonly string[];
  /** Where the entry stands, as somebody types it. */
  readonly whereTo: string;
}

const shownMissing = 4;

/** As it is typed: without the scheme, and without the stroke at the end. */
const typed = (url: string): string => url.replace(/^https?:\/\//, "").replace(/\/$/, "");

export function displayCardPage(item: PublishedItem, index: CollectionIndex): DisplayCardPage {
  const { collection, words, variants } = index;
  const { pages } = words;
  const say = pages.displayCard;
  const address = addresses.item(item.id);
  const { weighted, counted } = item.completeness;
  const survivors = variants.get(item.variant.id)?.rarity.survivors;
  return {
    kind: "card",
    address: addresses.displayCard(item.id),
    title: item.title,
    description: say.description(item.title),
    trail: [],
    linkedData: null,
    item: { address, name: say.back },
    variant: item.variant.name,
    verdict: {
      id: item.identification.verdict,
      word: pages.verdicts[item.identification.verdict].short,
    },
    plan: drawing({ kind: "item", item, plot: "case-plan" }, index, {
      idPrefix: "plan",
      linkPrefix: "../#part-",
      onCard: true,
    }),
    mark: weighted && completenessMark(weighted),
    complete:
      weighted &&
      say.complete(shareInterval(weighted, words), counted === null ? null : unitsInWords(counted, words)),
    assembled: assembledOf(item, index),
    facts: [
      { label: pages.item.issued, value: item.dating.issued ? words.date(item.dating.issued) : say.unknown },
      {
        label: pages.item.howRare,
        value: survivorsInBrief(survivors, words),
      },
      { label: pages.item.whatMissing, value: missingOf(item, index) },
    ],
    hazards: item.hazards.map(({ name }) => name),
    whereTo: typed(absoluteAddress(collection.settings.url, address)),
  };
}

function missingOf(item: PublishedItem, { words }: CollectionIndex): string {
  const { item: say, list } = words.pages;
  const missing = missingParts(item, words);
  const names = missing.slice(0, shownMissing).map(({ name }) => name);
  const more = missing.length - names.length;
  if (names.length === 0) return noneMissing(item, words);
  return list(more > 0 ? [...names, say.andMore(more)] : names);
}

/** The parts that another case gave, by name; null where it is as it came down. */
const assembledOf = ({ assembled, parts }: PublishedItem, { words }: CollectionIndex): string | null =>
  assembled.length === 0
    ? null
    : words.pages.list(assembled.map((id) => parts.find((part) => part.id === id)?.name ?? id));
