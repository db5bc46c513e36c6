import { type Diagnostic, diagnose, type Finding } from "../diagnostics/diagnostic.ts";
import { addresses } from "../pages/addresses.ts";
import { type KnownAddresses, knownAddresses } from "../pages/known-addresses.ts";
import { addressFrom, relativeAddress } from "../pages/relative-address.ts";
import { isSafeLink, linksIn, type TextLink } from "../prose/links.ts";
import type { FileKind } from "../source/collection-files.ts";
import { locateInBody, locateInValue } from "../source/locate-in-text.ts";
import type { RecordText } from "../source/read-texts.ts";
import { markdownRecord, yamlRecord } from "../source/record-file.ts";
import { formerIds } from "./family-groups.ts";

/** The page on which the text of a record stands. */
const pageOf: Partial<Record<FileKind, (id: string) => string>> = {
  collection: () => addresses.home,
  item: addresses.item,
  article: addresses.article,
  family: addresses.family,
  variant: addresses.variant,
};

/** What may be the address of a link, at a glance. */
const glimpsed = /\](?:\(|:)[ \t]*<?([^\s<>()]+)/g;

/**
 * Links and pictures of texts that lead to nothing in the site. What pages there will be is told by the names of files
 * alone, so that a part of the collection is never asked about another, and only a text that may have such a link is read.
 */
export function deadLinks(texts: readonly RecordText[]): Diagnostic[] {
  const idsOf = (kind: FileKind) => texts.filter((text) => text.kind === kind).map(({ id }) => id);
  const former = (kind: FileKind) => texts.filter((text) => text.kind === kind).flatMap(formerIds);
  let known: KnownAddresses | undefined;
  /** Former addresses lead on, but take longer to be known. */
  let withFormer: KnownAddresses | undefined;
  const families = idsOf("family");
  const variants = idsOf("variant");
  const isThere = (path: string): boolean => {
    known ??= knownAddresses({ items: idsOf("item"), articles: idsOf("article"), families, variants });
    if (known.has(path)) return true;
    withFormer ??= knownAddresses({ items: former("item"), articles: former("article"), families, variants });
    return withFormer.has(path);
  };
  const near = (path: string) => known?.near(path);

  return texts.flatMap((text) => {
    const page = pageOf[text.kind]?.(text.id);
    if (page === undefined) return [];
    const mayBeDead = ([, address = ""]: RegExpExecArray) =>
      deadEnd({ isPicture: false, address }, page, isThere, () => undefined) !== null;
    if (!text.text.includes("![") && ![...text.text.matchAll(glimpsed)].some(mayBeDead)) return [];
    return linksOf(text).flatMap(({ link, locate }) => {
      const finding = deadEnd(link, page, isThere, near);
      return finding ? [diagnose("dead-link", locate(), finding)] : [];
    });
  });
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
    return linksIn(typeof value === "string" ? value : "").map((link) => ({
      link,
      locate: () => locateInValue(document, [field], link.address),
    }));
  });
}

/** The places within the page of an article (templates/pages/article.ts); its headings have no address. */
const placeInArticle = /^#(?:text|notes|bibliography|cite|(?:basis|told|source|block)-.+)?$/;

function deadEnd(
  { address, isPicture }: Pick<TextLink, "address" | "isPicture">,
  page: string,
  isThere: (path: string) => boolean,
  near: (path: string) => string | undefined,
): Finding | null {
  if (isPicture)
    return {
      found: `"${address}", a picture`,
      expected: "words, figures, tables and drawings in a text",
      remedy: 'Photographs stand under "photos" of an item; a text links to its page.',
    };
  if (!isSafeLink(address))
    return {
      found: `"${address}", of which no link is made`,
      expected: 'an address that begins with "https://" or "mailto:", or one within the site',
    };
  if (/^(?:https?|mailto):/i.test(address.trim())) return null;
  const { path, rest } = addressFrom(page, address.replaceAll("\\", "%5C"));
  if (!isThere(path)) {
    const meant = near(path);
    return {
      found: `"${address}", which leads to no page`,
      expected: 'the address of a page of the site, such as "../../items/ID/"',
      remedy: meant && `Did you mean "${relativeAddress(page, meant)}"?`,
    };
  }
  const place = rest.slice(rest.indexOf("#"));
  if (!path.startsWith(addresses.articles) || !rest.includes("#") || placeInArticle.test(place)) return null;
  return {
    found: `"${address}", which leads to no place of its page`,
    expected: "the address of a whole page",
    remedy: "A heading in an article has no address of its own.",
  };
}
