import type { PublishedArticle, PublishedCollection, PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { hasDisplayCard } from "../addresses/has-display-card.ts";
import { relativeAddress } from "../addresses/relative-address.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { OutputFile } from "./output-file.ts";
import { xmlText } from "./xml.ts";

/** What every page that leads on has in common. */
interface LeadingOn {
  readonly site: Pick<PublishedCollection, "settings" | "audience">;
  /** The address of the script below. */
  readonly script: string;
}

/** What is asked for within the page goes along, which only a script can see to. */
export const leadingScript =
  'location.replace(document.querySelector("a").href + location.search + location.hash);\n';

interface Moved {
  readonly id: string;
  readonly formerly: readonly string[];
}

/**
 * A page at a former address, which leads to the present one. Without a script it does so by itself; with one that would
 * come first. The script is no module and not sealed, since browsers refuse both in a page that is opened from disk.
 */
function redirect(
  former: string,
  address: string,
  title: string,
  { site: { settings, audience }, script }: LeadingOn,
): OutputFile {
  const to = xmlText(relativeAddress(former, address));
  return {
    address: `${former}index.html`,
    text: [
      "<!doctype html>",
      `<html lang="${xmlText(settings.language)}">`,
      '<meta charset="utf-8">',
      `<noscript><meta http-equiv="refresh" content="0; url=${to}"></noscript>`,
      audience === "public"
        ? `<link rel="canonical" href="${to}">`
        : '<meta name="robots" content="noindex">',
      `<title>${xmlText(title)}</title>`,
      `<p><a href="${to}">${xmlText(title)}</a></p>`,
      `<script src="${xmlText(relativeAddress(former, script))}"></script>`,
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

export const itemRedirects = (item: PublishedItem, index: CollectionIndex, script: string): OutputFile[] =>
  redirects(
    item,
    item.title,
    [addresses.item, ...(hasDisplayCard(item, index) ? [addresses.displayCard] : [])],
    { site: index.collection, script },
  );

/** Those of families and variants, with their lists, and of pairs of which one outfit or both had another id. */
export function familyRedirects({ collection, items, words }: CollectionIndex, script: string): OutputFile[] {
  const leading = { site: collection, script };
  const heldFamilies = new Set(collection.items.map(({ family }) => family.id));
  const heldVariants = new Set(collection.items.map(({ variant }) => variant.id));
  return [
    ...collection.families.flatMap((family) => {
      const lists = heldFamilies.has(family.id) ? [addresses.itemsOfFamily] : [];
      return redirects(family, family.name, [addresses.family, ...lists], leading);
    }),
    ...collection.variants.flatMap((variant) => {
      const lists = heldVariants.has(variant.id) ? [addresses.itemsOfVariant] : [];
      const pages = [addresses.variant, addresses.sightingsOf, ...lists];
      return redirects(variant, variant.name, pages, leading);
    }),
    ...collection.comparisons.flatMap(({ items: pair }) => {
      const [first, second] = pair.map((id) => items.get(id));
      if (!first || !second) return [];
      const present = addresses.comparison(first.id, second.id);
      const title = words.pages.compare.pair(first.title, second.title);
      return formerPairs(first, second).map((former) => redirect(former, present, title, leading));
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
