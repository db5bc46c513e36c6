import path from "node:path";
import { renderBody, renderHead, renderPage, type Site } from "../../templates/render-page.ts";
import { type Templates, templates } from "../../templates/templates.ts";
import { dataFiles, recordFiles } from "../pages/data/data-files.ts";
import { iiifManifests } from "../pages/data/iiif-manifest.ts";
import type { OutputFile } from "../pages/data/output-file.ts";
import { type Page, sitePages } from "../pages/site-pages.ts";
import { publishCollection } from "../publication/publish-collection.ts";
import type { Audience, PublishedCollection } from "../publication/published.ts";
import { wordsFor } from "../words/languages.ts";
import { type CopiedFile, readAssets } from "./assets.ts";
import type { CollectionImages } from "./collection-images.ts";
import { collectionMedia, type OnProgress } from "./collection-media.ts";
import type { LoadedCollection } from "./load-collection.ts";
import { type PackedFile, searchFiles } from "./search-files.ts";
import { templateOverrides } from "./template-overrides.ts";
import { themeFiles } from "./theme-files.ts";
import { versionsOf } from "./versions.ts";

/** The whole site, ready to be written: what Eleventy renders, and what is written beside it. */
export interface SiteContent {
  readonly collection: PublishedCollection;
  readonly pages: ReadonlyMap<string, Page>;
  readonly files: ReadonlyMap<string, OutputFile>;
  readonly copied: readonly CopiedFile[];
  readonly packed: readonly PackedFile[];
  readonly refused: CollectionImages["refused"];
  /** A whole document. */
  readonly document: (page: Page) => string;
  /** What stands inside a layout of somebody else's. */
  readonly body: (page: Page) => string;
  /** What stands in the head of such a layout, with the style sheet of the address. */
  readonly head: (page: Page, style: string) => string;
  /** The address of the style sheet. */
  readonly style: string;
}

const byAddress = <File extends { readonly address: string }>(files: readonly File[]): Map<string, File> => {
  const map = new Map<string, File>();
  for (const file of files) {
    if (map.has(file.address)) throw new Error(`Two files of the site claim the address "${file.address}".`);
    map.set(file.address, file);
  }
  return map;
};

/** Publication → pages: the second half of the way. */
export async function siteContent(
  root: string,
  { collection, assessments }: NonNullable<LoadedCollection["sound"]>,
  audience: Audience,
  onProgress?: OnProgress,
): Promise<SiteContent> {
  const words = wordsFor(collection.settings.language);
  const published = publishCollection(collection, assessments, audience, words);
  const media = await collectionMedia(root, published, collection, words, onProgress);
  const records = recordFiles(published);
  const pages = byAddress(sitePages(published, words, media, versionsOf(records)));
  const themed = await themeFiles(root, published.settings.theme);
  const assets = readAssets(root, published.settings.theme, words.language, themed);
  const search = searchFiles(published);
  const own: Templates = { ...templates, ...(await templateOverrides(path.join(root, "templates"))) };
  const site: Site = {
    templates: own,
    words,
    settings: published.settings,
    audience,
    logo: themed.logo,
    assets: {
      style: assets.style,
      scripts: assets.scripts,
      words: assets.words.address,
      preload: assets.preload,
      search: search.index,
    },
  };
  const listed = [...pages.values()].flatMap(({ address, kind }) =>
    address.endsWith("/") && kind !== "card" ? [address] : [],
  );
  return {
    collection: published,
    pages,
    files: byAddress([
      ...assets.files,
      ...dataFiles(published, listed, records),
      ...iiifManifests(published, words, media),
      ...media.files,
    ]),
    copied: [...assets.copied, ...media.copied],
    packed: search.files,
    refused: [...media.refused, ...themed.refused],
    document: (page) => renderPage(page, site),
    body: (page) => renderBody(page, site),
    head: (page, style) => renderHead(page, { ...site, assets: { ...site.assets, style } }),
    style: assets.style,
  };
}
