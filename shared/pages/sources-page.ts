import { addresses } from "./addresses.ts";
import { citationsOf } from "./citations.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { linkedData } from "./linked-data.ts";
import type { Link, PageHead } from "./page.ts";
import { type SourceEntry, sourceEntry } from "./source-reference.ts";

export interface SourcesPage extends PageHead {
  readonly kind: "sources";
  readonly sources: readonly (SourceEntry & { readonly id: string; readonly cited: readonly Link[] })[];
}

export function sourcesPage(index: CollectionIndex): SourcesPage {
  const { collection, words } = index;
  const say = words.pages.sources;
  const citations = citationsOf(index);
  const order = new Intl.Collator(words.language);
  const sortKey = ({ authors, title }: (typeof collection.sources)[number]) =>
    `${authors[0]?.split(" ").at(-1) ?? title} ${title}`;
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
    sources: [...collection.sources]
      .sort((a, b) => order.compare(sortKey(a), sortKey(b)))
      .map((source) => ({
        ...sourceEntry(source, index),
        id: source.id,
        cited: citations.get(source.id) ?? [],
      })),
  };
}
