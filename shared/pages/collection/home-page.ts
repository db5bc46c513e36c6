import { addresses } from "../addresses/addresses.ts";
import { type ArticleSummary, articleSummary } from "../article/article-page.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { fullestFirst } from "../listed/fullest-first.ts";
import type { OpenedItem } from "../listed/listed-family.ts";
import type { Link, PageHead } from "../page.ts";
import { plainText, renderMarkdown } from "../prose/markdown.ts";
import type { EntryView } from "../views/entry-view.ts";

export interface HomePage extends PageHead {
  readonly kind: "home";
  /** HTML. */
  readonly text: string;
  readonly publisher: string | null;
  /** One outfit laid open. */
  readonly opened: Pick<OpenedItem, "item" | "photo" | "plan" | "note"> | null;
  readonly entries: readonly EntryView[];
  readonly all: Link;
  readonly families: readonly {
    readonly family: Link;
    readonly variants: readonly {
      readonly variant: Link;
      readonly issued: string | null;
      readonly survive: string;
    }[];
  }[];
  readonly articles: readonly ArticleSummary[];
  readonly counts: string;
  readonly basis: readonly Link[];
}

const shownAtHome = 12;

export function homePage(index: CatalogueIndex): HomePage {
  const { collection, words, listed, itemCount } = index;
  const { pages } = words;
  const say = pages.home;
  const { settings } = collection;
  const description = settings.description && plainText(settings.description, { index });
  const [opened] = listed.flatMap((family) => family.opened ?? []).sort(fullestFirst);
  const variants = listed.flatMap((family) => family.variants);
  const first = listed.flatMap(({ items }) => items).slice(0, shownAtHome);
  return {
    kind: "home",
    address: addresses.home,
    title: settings.title,
    description: description ?? say.description(settings.title),
    trail: [],
    linkedData: linkedData(collection, "WebSite", addresses.home, {
      name: settings.title,
      description,
      publisher: settings.publisher === null ? null : { "@type": "Organization", name: settings.publisher },
    }),
    text:
      settings.description === null
        ? ""
        : renderMarkdown(settings.description, { page: addresses.home, below: 1, index }),
    // Once is enough where the collection is called after whoever publishes it.
    publisher: settings.publisher === settings.title ? null : settings.publisher,
    opened: opened ?? null,
    entries: first.map(({ entry }) => entry),
    all: { address: addresses.items, name: say.allOutfits },
    families: listed.map((family) => ({
      family: { address: addresses.family(family.id), name: family.name },
      variants: family.variants.map(({ id, name, issued, survive }) => ({
        variant: { address: addresses.variant(id), name },
        issued: issued && words.date(issued),
        survive,
      })),
    })),
    articles: collection.articles.map((article) => articleSummary(article, index)),
    counts: say.counts(
      itemCount,
      variants.length,
      variants.reduce((total, { sightings }) => total + sightings, 0),
      collection.sources.length,
    ),
    basis: [
      { address: addresses.wants, name: pages.wants.title },
      { address: addresses.sightings, name: pages.sightings.title },
      { address: addresses.sources, name: pages.sources.title },
      { address: addresses.methods, name: pages.methods.title },
    ],
  };
}
