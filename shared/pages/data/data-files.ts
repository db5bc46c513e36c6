import { lookupOf } from "../../publication/lookup.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import { articleData } from "./article-data.ts";
import { collectionData } from "./collection-data.ts";
import { familyData } from "./family-data.ts";
import { feed } from "./feed.ts";
import { headerFiles } from "./header-files.ts";
import { itemData } from "./item-data.ts";
import { itemsCsv } from "./items-csv.ts";
import type { OutputFile } from "./output-file.ts";
import { redirects } from "./redirects.ts";
import { sitemap } from "./sitemap.ts";
import { variantData } from "./variant-data.ts";

/** The record behind each page that can be cited, as data. */
export function recordFiles(collection: PublishedCollection): OutputFile[] {
  const lookup = lookupOf(collection);
  return [
    ...collection.items.map(itemData),
    ...collection.variants.map(variantData),
    ...collection.families.map(familyData),
    ...collection.articles.map((article) => articleData(article, lookup)),
  ];
}

/** Every file beside the pages. What is for the owner alone asks no search engine in. */
export function dataFiles(
  collection: PublishedCollection,
  pageAddresses: readonly string[],
  records: readonly OutputFile[] = recordFiles(collection),
): OutputFile[] {
  const isPublic = collection.audience === "public";
  return [
    collectionData(collection),
    itemsCsv(collection),
    ...records,
    ...redirects(collection),
    feed(collection),
    ...headerFiles(collection.audience),
    ...(isPublic
      ? [sitemap(collection.settings.url, pageAddresses)]
      : [{ address: "/robots.txt", text: "User-agent: *\nDisallow: /\n" }]),
  ];
}
