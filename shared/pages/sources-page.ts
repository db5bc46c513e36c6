import { addresses } from "./addresses.ts";
import { citationsOf } from "./citations.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { linkedData } from "./linked-data.ts";
import type { Link, PageHead } from "./page.ts";
import { inBibliographicOrder, type SourceEntry, sourceEntry } from "./source-reference.ts";

export interface SourcesPage extends PageHead {
  readonly kind: "sources";
  readonly sources: readonly (SourceEntry & { readonly cited: readonly Link[] })[];
}

export function sourcesPage(index: CollectionIndex): SourcesPage {
  const { collection, words } = index;
  const say = words.pages.sources;
  const citations = citationsOf(index);
  return {
    kind: "sources",
    address: addresses.sources,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.sources, {
      name: say.title,
      description: say.description,
    }),
    sources: inBibliographicOrder(collection.sources, words).map((source) => ({
      ...sourceEntry(source, index),
      cited: citations.get(source.id) ?? [],
    })),
  };
}
