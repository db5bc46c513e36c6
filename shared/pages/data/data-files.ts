import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { collectionData } from "./collection-data.ts";
import { feed } from "./feed.ts";
import { headerFiles } from "./header-files.ts";
import { itemsCsv } from "./items-csv.ts";
import type { OutputFile } from "./output-file.ts";
import { articleRedirects } from "./redirects.ts";
import { sitemap } from "./sitemap.ts";

/** Every file of the whole collection beside its pages. What is for the owner alone asks no search engine in. */
export function dataFiles(index: CatalogueIndex, pageAddresses: readonly string[]): OutputFile[] {
  const { audience, settings, articles } = index.collection;
  return [
    collectionData(index),
    itemsCsv(index),
    ...articleRedirects(articles, index.collection),
    feed(index),
    ...headerFiles(index.collection),
    ...(audience === "public"
      ? [sitemap(settings.url, pageAddresses)]
      : [{ address: "/robots.txt", text: "User-agent: *\nDisallow: /\n" }]),
  ];
}
