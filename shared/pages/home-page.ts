import { casePlan } from "../plots/case-plan.ts";
import type { PublishedItem } from "../publication/published.ts";
import { addresses } from "./addresses.ts";
import { type ArticleSummary, articleSummary } from "./article-page.ts";
import { catalogueOrder } from "./catalogue-order.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { shareInterval } from "./completeness-view.ts";
import { type EntryView, entryView } from "./entry-view.ts";
import { linkedData } from "./linked-data.ts";
import { plainText, renderMarkdown } from "./markdown.ts";
import type { Link, PageHead } from "./page.ts";

export interface HomePage extends PageHead {
  readonly kind: "home";
  /** HTML. */
  readonly text: string;
  readonly publisher: string | null;
  /** One outfit laid open. */
  readonly opened: { readonly item: Link; readonly plan: string; readonly note: string } | null;
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

/** The fullest outfit whose evidence agrees with its label: it shows best what a whole one is. */
function fullest(items: readonly PublishedItem[]): PublishedItem | null {
  const sound = items.filter(({ identification }) => identification.verdict !== "contradicted");
  const certain = ({ completeness }: PublishedItem) => completeness.weighted?.low ?? 0;
  return [...(sound.length > 0 ? sound : items)].sort((a, b) => certain(b) - certain(a))[0] ?? null;
}

export function homePage(index: CollectionIndex): HomePage {
  const { collection, words, variants } = index;
  const { pages } = words;
  const say = pages.home;
  const { settings, items } = collection;
  const description = settings.description && plainText(settings.description, { index });
  const opened = fullest(items);
  const openedAddress = opened ? addresses.item(opened.id) : "";
  const sightings = collection.variants.reduce((total, variant) => total + variant.sightings.length, 0);
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
    publisher: settings.publisher,
    opened: opened && {
      item: { address: openedAddress, name: opened.title },
      plan: casePlan(opened.parts, {
        idPrefix: "opened",
        label: pages.item.planLabel(opened.title),
        words,
        stateWord: (summary) => pages.states[summary],
        linkPrefix: `.${openedAddress}#part-`,
      }),
      note: opened.completeness.weighted
        ? say.openNote(opened.title, shareInterval(opened.completeness.weighted, words))
        : opened.title,
    },
    entries: catalogueOrder(index)
      .flatMap(({ items: ofVariant }) => ofVariant)
      .slice(0, shownAtHome)
      .map((item) => entryView(item, index)),
    all: { address: addresses.items, name: say.allOutfits },
    families: collection.families.map((family) => ({
      family: { address: addresses.family(family.id), name: family.name },
      variants: family.variants.flatMap(({ id, name }) => {
        const variant = variants.get(id);
        if (!variant) return [];
        const { survivors } = variant.rarity;
        return [
          {
            variant: { address: addresses.variant(id), name },
            issued: variant.issued && words.date(variant.issued),
            survive: survivors.value === null ? say.surviveUnknown : say.survive(words.phrase(survivors)),
          },
        ];
      }),
    })),
    articles: collection.articles.map((article) => articleSummary(article, index)),
    counts: say.counts(items.length, collection.variants.length, sightings, collection.sources.length),
    basis: [
      { address: addresses.wants, name: pages.wants.title },
      { address: addresses.sightings, name: pages.sightings.title },
      { address: addresses.sources, name: pages.sources.title },
      { address: addresses.methods, name: pages.methods.title },
    ],
  };
}
