import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link, PageHead } from "../page.ts";

/** What stands where no page is. */
export interface NotFoundPage extends PageHead {
  readonly kind: "missing";
  readonly text: string;
  readonly ways: readonly Link[];
}

export function notFoundPage({ collection, words }: CollectionIndex): NotFoundPage {
  const { missing: say, ...pages } = words.pages;
  return {
    kind: "missing",
    address: addresses.missing,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: null,
    text: say.text,
    ways: [
      { address: addresses.home, name: pages.site.home },
      { address: addresses.items, name: pages.catalogue.title },
      { address: addresses.families, name: pages.family.title },
      ...(collection.articles.length > 0
        ? [{ address: addresses.articles, name: pages.articles.title }]
        : []),
      { address: addresses.sources, name: pages.sources.title },
    ],
  };
}
