import { isMasked } from "../../publication/masked-sign.ts";
import type { PublishedSighting, PublishedVariant } from "../../publication/published.ts";
import { serialKey } from "../../publication/serial-number.ts";
import { addresses } from "../addresses/addresses.ts";
import { type PagerView, pagerView } from "../addresses/pager.ts";
import { linkedData } from "../citation/linked-data.ts";
import { sourceLink } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { Link, PageHead } from "../page.ts";
import type { PageMaker } from "../page-maker.ts";
import { drawing } from "../views/drawings.ts";
import { type FigureView, figureView } from "../views/figure-view.ts";
import { yearsOf } from "../views/years-of.ts";

export interface SightingRow {
  readonly seen: string;
  /** By its serial, or else its name in the log; it leads to the outfit of this catalogue that bears the serial. */
  readonly example: Link | null;
  /** Its name in the log, where that says which rows beside this one are the same example. */
  readonly named: string | null;
  readonly kind: string;
  /** What was there, and what was not: "with" and "without", each with its parts. */
  readonly contents: readonly { readonly how: string; readonly parts: string }[];
  readonly condition: string | null;
  readonly price: string | null;
  readonly source: Link | null;
  /** The list that it was on, for an estimate from two of them. */
  readonly list: string | null;
  readonly remarks: string;
}

export interface SightingsPage extends PageHead {
  readonly kind: "sightings";
  readonly variant: Link;
  readonly rows: readonly SightingRow[];
  /** SVG; null where there is none. */
  readonly plot: string | null;
  readonly hasPrices: boolean;
  readonly watching: string | null;
  readonly pager: PagerView | null;
}

export const sightingsOnPage = 100;

export interface SightingsIndexPage extends PageHead {
  readonly kind: "sightings-index";
  readonly variants: readonly {
    readonly variant: Link;
    readonly log: Link;
    readonly sightings: string;
    readonly distinct: string;
    readonly once: string;
    readonly twice: string;
    readonly coverage: FigureView;
  }[];
  readonly watching: string | null;
}

/** "rest" stands for whatever neither list names. */
const rest = "rest";

function partWords(
  ids: readonly string[],
  variant: PublishedVariant,
  allOthers: string,
  { words }: CollectionIndex,
): string {
  const nameOf = (id: string) => {
    const name = variant.parts.find((part) => part.id === id)?.name;
    return name === undefined ? id : words.pages.nameInText(name);
  };
  return ids.map((id) => (id === rest ? allOthers : nameOf(id))).join(", ");
}

const priceInWords = (
  { amount, currency }: NonNullable<PublishedSighting["price"]>,
  { words: { numbers, pages } }: CollectionIndex,
): string =>
  currency === null
    ? pages.sightings.currencyUnknown(numbers.quantity(amount))
    : numbers.money(amount, currency);

/** The outfits of a variant by the serials that they tell: what is masked is not told by which row leads to it. */
function outfitsBySerial({ items }: PublishedVariant, index: CollectionIndex): ReadonlyMap<string, string> {
  return new Map(
    items.flatMap(({ id }) => {
      const serial = index.items.get(id)?.serial ?? null;
      return serial === null || isMasked(serial) ? [] : [[serialKey(serial), id]];
    }),
  );
}

function exampleOf(
  { serial, example }: PublishedSighting,
  outfits: ReadonlyMap<string, string>,
): Link | null {
  const name = serial ?? example;
  if (name === null) return null;
  const outfit = serial === null ? undefined : outfits.get(serialKey(serial));
  return { address: outfit === undefined ? "" : addresses.item(outfit), name };
}

function sightingRow(
  row: PublishedSighting,
  variant: PublishedVariant,
  outfits: ReadonlyMap<string, string>,
  index: CollectionIndex,
): SightingRow {
  const { words } = index;
  const say = words.pages.sightings;
  const { present, absent } = row;
  const others = present.length + absent.length === 1 ? say.all : say.allOthers;
  const contents = (["present", "absent"] as const)
    .filter((state) => row[state].length > 0)
    // The rest comes after what it is the rest of.
    .sort((a, b) => Number(row[a].includes(rest)) - Number(row[b].includes(rest)))
    .map((state) => ({ how: say[state], parts: partWords(row[state], variant, others[state], index) }));
  return {
    seen: words.date(row.seen),
    example: exampleOf(row, outfits),
    named: row.serial === null ? null : row.example,
    kind: say.kinds[row.kind],
    contents,
    condition: row.condition,
    price: row.price && priceInWords(row.price, index),
    source: row.source === null ? null : sourceLink(row.source, index),
    list: row.list === null ? null : say.list(row.list),
    remarks: [row.relisted ? say.relisted : null, row.note].filter((text) => text !== null).join("; "),
  };
}

const bySeen = (a: PublishedSighting, b: PublishedSighting): number => {
  const first = ({ seen }: PublishedSighting) => yearsOf(seen)?.first ?? Number.POSITIVE_INFINITY;
  const [left, right] = [first(a), first(b)];
  if (left !== right) return left < right ? -1 : 1;
  return a.seen < b.seen ? -1 : a.seen > b.seen ? 1 : 0;
};

const watched = ({ collection, words }: CollectionIndex): string | null =>
  collection.settings.watching && words.pages.sightings.watching(words.date(collection.settings.watching));

/** The log of a variant, page by page. */
export function sightingsPages(
  variant: PublishedVariant,
  index: CollectionIndex,
): PageMaker<SightingsPage>[] {
  const of = Math.max(1, Math.ceil(variant.sightings.length / sightingsOnPage));
  const list = addresses.sightingsOf(variant.id);
  let inOrder: readonly PublishedSighting[] | null = null;
  return Array.from({ length: of }, (_, at) => ({
    address: addresses.page(list, at + 1),
    make: () => {
      inOrder ??= [...variant.sightings].sort(bySeen);
      return sightingsPage(variant, inOrder, { page: at + 1, of }, index);
    },
  }));
}

function sightingsPage(
  variant: PublishedVariant,
  inOrder: readonly PublishedSighting[],
  { page, of }: { readonly page: number; readonly of: number },
  index: CollectionIndex,
): SightingsPage {
  const { collection, words } = index;
  const { sightings: say, finder } = words.pages;
  const outfits = outfitsBySerial(variant, index);
  const list = addresses.sightingsOf(variant.id);
  const address = addresses.page(list, page);
  const title =
    page === 1 ? say.titleOf(variant.name) : finder.titleOfPage(say.titleOf(variant.name), page, of);
  const description = say.descriptionOf(variant.name, variant.sightings.length);
  return {
    kind: "sightings",
    address,
    title,
    description,
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.sightings, name: say.title },
      ...(page === 1 ? [] : [{ address: list, name: say.titleOf(variant.name) }]),
    ],
    linkedData: linkedData(collection, "CollectionPage", address, { name: title, description }),
    variant: { address: addresses.variant(variant.id), name: variant.name },
    rows: inOrder
      .slice((page - 1) * sightingsOnPage, page * sightingsOnPage)
      .map((row) => sightingRow(row, variant, outfits, index)),
    plot:
      page === 1
        ? drawing({ kind: "variant", variant, plot: "sightings" }, index, { idPrefix: "sightings" })
        : null,
    hasPrices: variant.sightings.some(({ price }) => price !== null),
    watching: watched(index),
    pager: pagerView(page, of, (number) => addresses.page(list, number), finder),
  };
}

/** A variant's line in the list of logs. */
export function logLine(
  variant: PublishedVariant,
  index: CollectionIndex,
): SightingsIndexPage["variants"][number] {
  const { count } = index.words.numbers;
  const { rarity } = variant;
  return {
    variant: { address: addresses.variant(variant.id), name: variant.name },
    log: { address: addresses.sightingsOf(variant.id), name: variant.name },
    sightings: count(rarity.sightings),
    distinct: count(rarity.distinct),
    once: count(rarity.once),
    twice: count(rarity.twice),
    coverage: figureView(rarity.coverage, index),
  };
}

export function sightingsIndexPage(index: CatalogueIndex): SightingsIndexPage {
  const { collection, words } = index;
  const say = words.pages.sightings;
  return {
    kind: "sightings-index",
    address: addresses.sightings,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.sightings, {
      name: say.title,
      description: say.description,
    }),
    variants: index.listed.flatMap(({ variants }) => variants.map(({ log }) => log)),
    watching: watched(index),
  };
}
