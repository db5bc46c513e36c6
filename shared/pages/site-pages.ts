import type { Media } from "../images/media.ts";
import type { PublishedCollection } from "../publication/published.ts";
import type { Words } from "../words/words.ts";
import { type ArticlePage, type ArticlesPage, articlePage, articlesPage } from "./article-page.ts";
import { type CataloguePage, cataloguePages } from "./catalogue-page.ts";
import { indexCollection } from "./collection-index.ts";
import { type ComparePage, comparePage } from "./compare-page.ts";
import { type ComparisonsPage, comparisonsPage } from "./comparisons-page.ts";
import { type DisplayCardPage, displayCardPage, hasDisplayCard } from "./display-card-page.ts";
import { type FamiliesPage, type FamilyPage, familiesPage, familyPage } from "./family-page.ts";
import { type HomePage, homePage } from "./home-page.ts";
import { type ItemPage, itemPage } from "./item-page.ts";
import { type MethodsPage, methodsPage } from "./methods-page.ts";
import { type MissingPage, missingPage } from "./missing-page.ts";
import {
  type SightingsIndexPage,
  type SightingsPage,
  sightingsIndexPage,
  sightingsPage,
} from "./sightings-page.ts";
import { type SourcesPage, sourcesPage } from "./sources-page.ts";
import { type VariantPage, variantPage } from "./variant-page.ts";
import { type WantsPage, wantsPage } from "./wants-page.ts";

/** A page of the site: everything that its template prints. */
export type Page =
  | HomePage
  | CataloguePage
  | ItemPage
  | DisplayCardPage
  | ComparisonsPage
  | ComparePage
  | FamiliesPage
  | FamilyPage
  | VariantPage
  | ArticlesPage
  | ArticlePage
  | SourcesPage
  | SightingsIndexPage
  | SightingsPage
  | WantsPage
  | MethodsPage
  | MissingPage;

/** Every page, from what may be published and nothing else. */
export function sitePages(
  collection: PublishedCollection,
  words: Words,
  media: Media,
  versions: ReadonlyMap<string, string>,
): Page[] {
  const index = indexCollection(collection, words, media, versions);
  return [
    homePage(index),
    ...cataloguePages(index),
    ...collection.items.map((item) => itemPage(item, index)),
    ...collection.items
      .filter((item) => hasDisplayCard(item, index))
      .map((item) => displayCardPage(item, index)),
    comparisonsPage(index),
    ...collection.comparisons.flatMap((comparison) => comparePage(comparison, index)),
    familiesPage(index),
    ...collection.families.map((family) => familyPage(family, index)),
    ...collection.variants.map((variant) => variantPage(variant, index)),
    articlesPage(index),
    ...collection.articles.map((article) => articlePage(article, index)),
    sourcesPage(index),
    sightingsIndexPage(index),
    ...collection.variants.map((variant) => sightingsPage(variant, index)),
    wantsPage(index),
    methodsPage(index),
    missingPage(index),
  ];
}
