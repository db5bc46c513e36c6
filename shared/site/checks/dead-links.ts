import { type Diagnostic, diagnose, type Finding } from "../../diagnostics/diagnostic.ts";
import { grouping } from "../../lists/grouping.ts";
import { addresses } from "../../pages/addresses/addresses.ts";
import { hasDisplayCard } from "../../pages/addresses/has-display-card.ts";
import {
  type KnownAddresses,
  knownAddresses,
  type SiteNames,
} from "../../pages/addresses/known-addresses.ts";
import { addressFrom, relativeAddress } from "../../pages/addresses/relative-address.ts";
import { isSafeLink, linksIn, type TextLink } from "../../prose/links.ts";
import type { FileKind } from "../../source/collection-files.ts";
import { locateInBody, locateInValue } from "../../source/locate-in-text.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { markdownRecord, yamlRecord } from "../../source/record-file.ts";
import { topLine } from "../../source/top-word.ts";
import { familyIn, formerIds, statusOf, variantOf, yamlOf } from "../groups/written-record.ts";

/** The page on which the text of a record stands. */
const pageOf: Partial<Record<FileKind, (id: string) => string>> = {
  collection: () => addresses.home,
  item: addresses.item,
  article: addresses.article,
  family: addresses.family,
  variant: addresses.variant,
};

/** What may be the address of a link, at a glance. */
const glimpsed = /\](?:\(|:)\s*(?:<([^<>\n]*)|([^\s<>()]+))/g;

/** What the site will have; records are read in full only where what is asked of them cannot be seen at once. */
function namesOf(texts: readonly RecordText[]): SiteNames {
  const ofKind = (kind: FileKind) => texts.filter((text) => text.kind === kind);
  const idsOf = (kind: FileKind) => ofKind(kind).map(({ id }) => id);
  const items = ofKind("item");
  const ofVariant = grouping(items, variantOf);
  const held = ofKind("variant").flatMap(({ id, file }) => {
    const count = ofVariant.get(id)?.length ?? 0;
    return count === 0 ? [] : [{ id, family: familyIn(file), count }];
  });
  const ofFamily = grouping(held, ({ family }) => family);
  const hasCard = (item: RecordText) =>
    hasDisplayCard({ status: statusOf(item) }, { itemCount: items.length });
  return {
    items: idsOf("item"),
    families: idsOf("family"),
    variants: idsOf("variant"),
    articles: idsOf("article"),
    carded: items.filter(hasCard).map(({ id }) => id),
    pictured: items.filter((item) => mayHave(item, "photos")).map(({ id }) => id),
    held: {
      families: new Map([...ofFamily].map(([id, of]) => [id, of.reduce((sum, { count }) => sum + count, 0)])),
      variants: new Map(held.map(({ id, count }) => [id, count])),
    },
    hasFields: ofKind("collection").some((settings) => mayHave(settings, "field-reference")),
  };
}

/** The same by the ids that records had before; of a list only the first page leads on. */
function formerNamesOf(texts: readonly RecordText[], { carded, pictured, held }: SiteNames): SiteNames {
  const former = (kind: FileKind, ids?: readonly string[]) =>
    texts.filter((text) => text.kind === kind && (ids?.includes(text.id) ?? true)).flatMap(formerIds);
  const first = (kind: FileKind, lists: ReadonlyMap<string, number>) =>
    new Map(former(kind, [...lists.keys()]).map((id) => [id, 1]));
  return {
    items: former("item"),
    families: former("family"),
    variants: former("variant"),
    articles: former("article"),
    carded: former("item", carded),
    pictured: former("item", pictured),
    held: { families: first("family", held.families), variants: first("variant", held.variants) },
    hasFields: false,
  };
}

/** Whether a record may have something under a key at its top. */
function mayHave(record: RecordText, key: string): boolean {
  const line = topLine(yamlOf(record), key);
  return line !== undefined && !/^[ \t]+(?:\[[ \t]*\]|~|null|false)[ \t]*(?:[ \t]#.*)?$/.test(line ?? "");
}

/**
 * Links and pictures in texts that lead to nothing on the site. Which pages there will be is told by the names of
 * files and by what can be seen in them at a glance. So no part of the collection has to be read for another, and a
 * text is read only where it may have such a link.
 */
export function deadLinks(
  texts: readonly RecordText[],
  /** Whoever links to one of these is told of nothing: it is the file that is to be mended. */
  unread: readonly UnreadFile[] = [],
): Diagnostic[] {
  let names: SiteNames | undefined;
  let known: KnownAddresses | undefined;
  /** Former addresses lead on, but take longer to be known. */
  let withFormer: KnownAddresses | undefined;
  const isThere = (path: string): boolean => {
    names ??= namesOf(texts);
    known ??= knownAddresses(names);
    if (known.has(path)) return true;
    withFormer ??= knownAddresses(formerNamesOf(texts, names));
    return withFormer.has(path) || unread.some((file) => mayHaveHad(file, path));
  };
  const near = (path: string) => known?.near(path);

  return texts.flatMap((text) => {
    const page = pageOf[text.kind]?.(text.id);
    if (page === undefined) return [];
    const mayBeDead = ([, bracketed, bare = ""]: RegExpExecArray) => {
      const address = bracketed ?? bare;
      return deadEnd({ isPicture: false, address, href: address }, page, isThere, () => undefined) !== null;
    };
    if (!text.text.includes("![") && ![...text.text.matchAll(glimpsed)].some(mayBeDead)) return [];
    return linksOf(text).flatMap(({ link, locate }) => {
      const finding = deadEnd(link, page, isThere, near);
      return finding ? [diagnose("dead-link", locate(), finding)] : [];
    });
  });
}

/** A file that cannot be read, with its text, where it is one. */
export interface UnreadFile {
  readonly id: string;
  readonly text: string;
}

/** Whether the id in an address is that of a record, or may be one that it had before. */
function mayHaveHad({ id, text }: UnreadFile, path: string): boolean {
  const names = new Set([id, ...(text.includes("formerly") ? text.split(/[\s"',[\]]+/) : [])]);
  return path.split("/").some((name) => name !== "" && names.has(name));
}

/** What is written as Markdown in a record, and where its links stand in the file. */
function linksOf({ kind, file, text }: RecordText) {
  const isMarkdown = kind === "item" || kind === "article";
  const { document } = isMarkdown ? markdownRecord(file, text) : yamlRecord(file, text);
  if (!document) return [];
  if (isMarkdown)
    return linksIn(document.body).map((link) => ({
      link,
      locate: () => locateInBody(document, link.start, link.end),
    }));
  const data = document.data as Readonly<Record<string, unknown>> | null;
  return ["description", "note"].flatMap((field) => {
    const value = data?.[field];
    const words = typeof value === "string" ? value : "";
    return linksIn(words).map((link) => ({
      link,
      locate: () => locateInValue(document, [field], words.slice(link.start, link.end)),
    }));
  });
}

/** The places within the page of an article (templates/pages/article.ts); its headings have no address. */
const placeInArticle = /^#(?:top|main_text|notes|bibliography|cite|(?:basis|told|source|block)-.+)?$/i;

const pageOfArticle = /^\/articles\/(?!index\.html$)[^/]+(?:\/(?:index\.html)?)?$/;

function deadEnd(
  { address, href, isPicture }: Pick<TextLink, "address" | "href" | "isPicture">,
  page: string,
  isThere: (path: string) => boolean,
  near: (path: string) => string | undefined,
): Finding | null {
  // As browsers read addresses, a stroke either way parts folders; a page has that of a text escaped.
  const way = addressFrom(page, href.replaceAll("\\", "%5C"));
  if (isPicture)
    return {
      found: `"${address}", a picture, in place of which its alternative text is printed`,
      expected: "only words, figures, tables and drawings in a text",
      remedy: 'List photographs under "photos" of an item, and link to its page.',
    };
  if (!isSafeLink(href))
    return {
      found: `"${address}", which is not made into a link`,
      expected: 'an address that begins with "https://" or "mailto:", or one within the site',
    };
  if (/^(?:https?|mailto):/i.test(href.trim())) return null;
  if (!way || !isThere(way.path)) {
    const meant = way && near(way.path);
    return {
      found: `"${address}", which leads to no page`,
      expected: 'the address of a page of the site, such as "../../items/ID/"',
      remedy: meant ? `Did you mean "${relativeAddress(page, meant)}"?` : undefined,
    };
  }
  const { path, rest } = way;
  const place = rest.slice(rest.indexOf("#"));
  if (!pageOfArticle.test(path) || !rest.includes("#") || placeInArticle.test(place)) return null;
  return {
    found: `"${address}", which leads nowhere on that page`,
    expected: "the address of a whole page",
    remedy: "A heading in an article has no address of its own.",
  };
}
