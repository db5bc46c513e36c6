import type { Site } from "../../../templates/render-page.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { noMedia } from "../../images/media.ts";
import { addresses, isDisplayCard } from "../../pages/addresses/addresses.ts";
import { indexCollection } from "../../pages/collection-index.ts";
import { articleData } from "../../pages/data/article-data.ts";
import { dataFiles } from "../../pages/data/data-files.ts";
import { atFormerAddresses } from "../../pages/data/redirects.ts";
import type { CatalogueIndex } from "../../pages/listed/catalogue-index.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import type { PageMaker } from "../../pages/page-maker.ts";
import { type Page, wholePages } from "../../pages/site-pages.ts";
import { fieldReference } from "../../publication/field-reference.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import { checkTexts } from "../../publication/references/check-texts.ts";
import { readRecordSchemas } from "../../source/record-schemas.ts";
import { citedVersion } from "./cited-version.ts";
import { type LastSearch, type PackedFile, searchFiles } from "./search-files.ts";
import type { SiteFile } from "./site-file.ts";
import type { SiteFrame } from "./site-frame.ts";

export interface WholeSite {
  readonly diagnostics: readonly Diagnostic[];
  readonly pages: readonly PageMaker[];
  /** What is around a page: only one with a form to ask is told where a search begins. */
  readonly siteOf: (page: Page) => Site;
  readonly searchFiles: readonly PackedFile[];
  /** Data, feed, styles, scripts: made when they are asked for. */
  readonly otherFiles: () => readonly SiteFile[];
}

/**
 * What shows the collection as a whole: lists, articles, search, feed. Made from what is listed of each family, and for
 * the texts of the collection's own from the families that they speak of.
 */
export function wholeSite(
  frame: SiteFrame,
  listed: readonly ListedFamily[],
  quoted: readonly PublishedCollection[],
  pageAddresses: readonly string[],
  lastSearch?: LastSearch,
): WholeSite {
  const { words } = frame.site;
  const inOrder = <Record extends { readonly id: string }>(records: readonly Record[]): Record[] =>
    [...records].sort((a, b) => (a.id < b.id ? -1 : 1));
  const collection: PublishedCollection = {
    ...frame.published,
    families: quoted.flatMap(({ families }) => families),
    variants: quoted.flatMap(({ variants }) => variants),
    items: inOrder(quoted.flatMap(({ items }) => items)),
    comparisons: quoted.flatMap(({ comparisons }) => comparisons),
  };
  const versions = new Map<string, string>();
  const itemCount = listed.reduce((count, { items }) => count + items.length, 0);
  const index: CatalogueIndex = {
    ...indexCollection(collection, words, noMedia, versions, itemCount),
    listed,
  };
  const articles = collection.articles.flatMap((article) => {
    const data = articleData(article, index);
    versions.set(data.address, citedVersion(data.text));
    return [data, ...atFormerAddresses(data, article, addresses.articleData)];
  });
  const pages = wholePages(
    index,
    collection.settings.fieldReference ? fieldReference(readRecordSchemas(), words.pages.fields.takes) : null,
  );
  const search = searchFiles(index, lastSearch);
  // A card is for its shelf, and not for those who search the web.
  const addressed = [...pages.map(({ address }) => address), ...pageAddresses].filter(
    (address) => address.endsWith("/") && !isDisplayCard(address),
  );
  const searching = { ...frame.site, assets: { ...frame.site.assets, search: search.index } };
  const text = (file: { readonly address: string; readonly text: string }): SiteFile => ({
    kind: "text",
    ...file,
  });
  return {
    diagnostics: checkTexts(
      frame.collection,
      frame.settingsDocument,
      () => collection,
      frame.hiddenInArticles,
    ),
    pages,
    siteOf: (page) => (page.kind === "catalogue" && page.finder ? searching : frame.site),
    searchFiles: search.files,
    otherFiles: () => [
      ...articles.map(text),
      ...dataFiles(index, addressed).map(text),
      ...frame.assets.files.map(text),
      ...frame.assets.copied.map((file): SiteFile => ({ kind: "copy", ...file })),
    ],
  };
}
