import { grouping } from "../../lists/grouping.ts";
import type { PublishedArticle, PublishedCollection, PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { hasDisplayCard } from "../addresses/has-display-card.ts";
import { entriesOnPage } from "../addresses/pager.ts";
import { relativeAddress } from "../addresses/relative-address.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { contentSecurityPolicy, leadingScript, referrerPolicy } from "../security-policy.ts";
import { sightingsOnPage } from "../variant/sightings-page.ts";
import type { OutputFile } from "./output-file.ts";
import { xmlText } from "./xml.ts";

/** What every page that leads on has in common. */
type LeadingOn = Pick<PublishedCollection, "settings" | "audience">;

interface Moved {
  readonly id: string;
  readonly formerly: readonly string[];
}

/** A page at a former address, which leads to the present one. Without a script it does so by itself; with one that would come first. */
function redirect(
  former: string,
  address: string,
  title: string,
  { settings, audience }: LeadingOn,
): OutputFile {
  const to = xmlText(relativeAddress(former, address));
  return {
    address: `${former}index.html`,
    text: [
      "<!doctype html>",
      `<html lang="${xmlText(settings.language)}">`,
      '<meta charset="utf-8">',
      `<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy}">`,
      `<meta name="referrer" content="${referrerPolicy}">`,
      '<meta name="viewport" content="width=device-width, initial-scale=1">',
      `<noscript><meta http-equiv="refresh" content="0; url=${to}"></noscript>`,
      audience === "public"
        ? `<link rel="canonical" href="${to}">`
        : '<meta name="robots" content="noindex">',
      `<title>${xmlText(title)}</title>`,
      `<p><a href="${to}">${xmlText(title)}</a></p>`,
      ...(settings.notice === null ? [] : [`<p>${xmlText(settings.notice)}</p>`]),
      `<script>${leadingScript}</script>`,
      "</html>",
      "",
    ].join("\n"),
  };
}

/** The pages of one record, each at every address that it had. */
const redirects = (
  { id, formerly }: Moved,
  title: string,
  pages: readonly ((id: string) => string)[],
  leading: LeadingOn,
): OutputFile[] =>
  formerly.flatMap((former) => pages.map((page) => redirect(page(former), page(id), title, leading)));

export const articleRedirects = (articles: readonly PublishedArticle[], leading: LeadingOn): OutputFile[] =>
  articles.flatMap((article) => redirects(article, article.title, [addresses.article], leading));

export const itemRedirects = (item: PublishedItem, index: CollectionIndex): OutputFile[] =>
  redirects(
    item,
    item.title,
    [addresses.item, ...(hasDisplayCard(item, index) ? [addresses.displayCard] : [])],
    index.collection,
  );

/** A list with its further pages, of which there are now as many as its entries need. */
const pagesOfList = (
  list: (id: string) => string,
  entries: number,
  onPage = entriesOnPage,
): ((id: string) => string)[] =>
  Array.from(
    { length: Math.ceil(entries / onPage) },
    (_, at) => (id: string) => addresses.page(list(id), at + 1),
  );

/** Those of families and variants, with their lists, and of pairs of which one outfit or both had another id. */
export function familyRedirects({ collection, items, words }: CollectionIndex): OutputFile[] {
  const ofFamily = grouping(collection.items, ({ family }) => family.id);
  return [
    ...collection.families.flatMap((family) => {
      const lists = pagesOfList(addresses.itemsOfFamily, ofFamily.get(family.id)?.length ?? 0);
      return redirects(family, family.name, [addresses.family, ...lists], collection);
    }),
    ...collection.variants.flatMap((variant) => {
      const lists = pagesOfList(addresses.itemsOfVariant, variant.items.length);
      const log = pagesOfList(addresses.sightingsOf, Math.max(1, variant.sightings.length), sightingsOnPage);
      const pages = [addresses.variant, ...log, ...lists];
      return redirects(variant, variant.name, pages, collection);
    }),
    ...collection.comparisons.flatMap(({ items: pair }) => {
      const [first, second] = pair.map((id) => items.get(id));
      if (!first || !second) return [];
      const present = addresses.comparison(first.id, second.id);
      const title = words.pages.compare.pair(first.title, second.title);
      return formerPairs(first, second).map((former) => redirect(former, present, title, collection));
    }),
  ];
}

/** Where two were compared while one of them, or both, had another id: the first by id came first. */
const formerPairs = (first: Moved, second: Moved): string[] =>
  [first.id, ...first.formerly].flatMap((one) =>
    [second.id, ...second.formerly].flatMap((other) => {
      if (one === first.id && other === second.id) return [];
      return one < other ? addresses.comparison(one, other) : addresses.comparison(other, one);
    }),
  );

/** A file of data cannot lead on: it stands at its former addresses as well. */
export const atFormerAddresses = (
  { text }: OutputFile,
  { formerly }: Moved,
  at: (id: string) => string,
): OutputFile[] => formerly.map((former) => ({ address: at(former), text }));
