import type { PublishedCollection } from "../../publication/published.ts";
import { collectionData } from "./collection-data.ts";
import { feed } from "./feed.ts";
import { itemData } from "./item-data.ts";
import { itemsCsv } from "./items-csv.ts";
import type { OutputFile } from "./output-file.ts";
import { redirects } from "./redirects.ts";
import { sitemap } from "./sitemap.ts";
import { variantData } from "./variant-data.ts";

/** Every file beside the pages. What is for the owner alone asks no search engine in. */
export function dataFiles(collection: PublishedCollection, pageAddresses: readonly string[]): OutputFile[] {
  const isPublic = collection.audience === "public";
  return [
    collectionData(collection),
    itemsCsv(collection),
    ...collection.items.map(itemData),
    ...collection.variants.map(variantData),
    ...redirects(collection),
    feed(collection),
    ...(isPublic
      ? [sitemap(collection.settings.url, pageAddresses)]
      : [{ address: "/robots.txt", text: "User-agent: *\nDisallow: /\n" }]),
  ];
}
