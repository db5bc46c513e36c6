import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { cataloguePages } from "../../shared/pages/collection/catalogue-page.ts";
import type { PublishedCollection } from "../../shared/publication/published.ts";
import { readAssets } from "../../shared/site/assets/assets.ts";
import { searchFiles } from "../../shared/site/files/search-files.ts";
import { english } from "../../shared/words/en/english.ts";
import { renderPage } from "../../templates/render-page.ts";
import { templates } from "../../templates/templates.ts";
import { catalogueOf } from "../collections/collection.ts";

export interface SearchSite {
  /** Seconds of processor for the index and its files. */
  readonly processor: number;
  /** Bytes as they are sent. */
  readonly index: number;
  readonly details: number;
  readonly wordFiles: readonly number[];
}

/** As much of a site as a search needs: the catalogue's first page, its assets and the index. */
export function writeSearchSite(published: PublishedCollection, folder: string): SearchSite {
  const write = (address: string, bytes: string | Uint8Array) => {
    const file = path.join(folder, address);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, bytes);
  };
  const index = catalogueOf(published);
  const before = process.cpuUsage();
  const search = searchFiles(index);
  const { user, system } = process.cpuUsage(before);
  for (const { address, bytes } of search.files) write(address, bytes);

  const assets = readAssets(folder, published.settings.theme, english.language);
  for (const { address, text } of assets.files) write(address, text);
  const [first] = cataloguePages(index);
  if (!first) throw new Error("Found no page of the catalogue.");
  const html = renderPage(first.make(), {
    templates,
    words: english,
    settings: published.settings,
    audience: published.audience,
    hasArticles: published.articles.length > 0,
    logo: null,
    assets: {
      style: assets.style,
      printStyle: assets.printStyle,
      scripts: assets.scripts,
      words: assets.words,
      preload: assets.preload,
      search: search.index,
    },
  });
  write(`${first.address}index.html`, html);
  const sizes = (name: string) =>
    search.files
      .filter(({ address }) => address.includes(`/search/${name}`))
      .map(({ bytes }) => bytes.byteLength);
  return {
    processor: (user + system) / 1e6,
    index: sizes("index")[0] ?? 0,
    details: sizes("details")[0] ?? 0,
    wordFiles: sizes("words"),
  };
}
