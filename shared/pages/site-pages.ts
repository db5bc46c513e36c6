import type { RecordReference } from "../publication/field-reference.ts";
import type { PublishedItem } from "../publication/published.ts";
import { addresses } from "./addresses/addresses.ts";
import { hasDisplayCard } from "./addresses/has-display-card.ts";
import { type ArticlePage, type ArticlesPage, articlePage, articlesPage } from "./article/article-page.ts";
import { type CataloguePage, cataloguePages } from "./collection/catalogue-page.ts";
import { type FieldsPage, fieldsPage } from "./collection/fields-page.ts";
import { type HomePage, homePage } from "./collection/home-page.ts";
import { type MethodsPage, methodsPage } from "./collection/methods-page.ts";
import { type NotFoundPage, notFoundPage } from "./collection/not-found-page.ts";
import { type SourcesPage, sourcesPage } from "./collection/sources-page.ts";
import { type WantsPage, wantsPage } from "./collection/wants-page.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { type ComparePage, comparePage } from "./compare/compare-page.ts";
import { type ComparisonsPage, comparisonsPage } from "./compare/comparisons-page.ts";
import { type FamiliesPage, type FamilyPage, familiesPage, familyPage } from "./family/family-page.ts";
import { type DisplayCardPage, displayCardPage } from "./item/display-card-page.ts";
import { type ItemPage, itemPage } from "./item/item-page.ts";
import type { CatalogueIndex } from "./listed/catalogue-index.ts";
import type { PageMaker } from "./page-maker.ts";
import {
  type SightingsIndexPage,
  type SightingsPage,
  sightingsIndexPage,
  sightingsPages,
} from "./variant/sightings-page.ts";
import { type VariantPage, variantPage } from "./variant/variant-page.ts";

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
  | FieldsPage
  | NotFoundPage;

/** The pages of the families of an index, from what may be published of them and nothing else. */
export function familyPages(index: CollectionIndex): PageMaker[] {
  const { collection } = index;
  return [
    ...collection.families.map((family) => ({
      address: addresses.family(family.id),
      make: () => familyPage(family, index),
    })),
    ...collection.variants.flatMap((variant) => [
      { address: addresses.variant(variant.id), make: () => variantPage(variant, index) },
      ...sightingsPages(variant, index),
    ]),
    ...collection.comparisons.map((comparison) => ({
      address: addresses.comparison(...comparison.items),
      make: () => comparePage(comparison, index),
    })),
  ];
}

/** The pages of one item. */
export function itemPages(item: PublishedItem, index: CollectionIndex): PageMaker[] {
  const card = { address: addresses.displayCard(item.id), make: () => displayCardPage(item, index) };
  return [
    { address: addresses.item(item.id), make: () => itemPage(item, index) },
    ...(hasDisplayCard(item, index) ? [card] : []),
  ];
}

/** The pages of the whole collection; with the fields of its records where it is to have them. */
export function wholePages(index: CatalogueIndex, records: readonly RecordReference[] | null): PageMaker[] {
  return [
    { address: addresses.home, make: () => homePage(index) },
    ...cataloguePages(index),
    { address: addresses.comparisons, make: () => comparisonsPage(index) },
    { address: addresses.families, make: () => familiesPage(index) },
    { address: addresses.articles, make: () => articlesPage(index) },
    ...index.collection.articles.map((article) => ({
      address: addresses.article(article.id),
      make: () => articlePage(article, index),
    })),
    { address: addresses.sources, make: () => sourcesPage(index) },
    { address: addresses.sightings, make: () => sightingsIndexPage(index) },
    { address: addresses.wants, make: () => wantsPage(index) },
    { address: addresses.methods, make: () => methodsPage(index) },
    ...(records === null ? [] : [{ address: addresses.fields, make: () => fieldsPage(index, records) }]),
    { address: addresses.missing, make: () => notFoundPage(index) },
  ];
}
