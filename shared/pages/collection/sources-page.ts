import { addresses } from "../addresses/addresses.ts";
import { citedByTexts, joinedCitations } from "../citation/cited-pages.ts";
import { linkedData } from "../citation/linked-data.ts";
import { inBibliographicOrder, type SourceEntry, sourceEntry } from "../citation/source-reference.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { Link, PageHead } from "../page.ts";

export interface SourcesPage extends PageHead {
  readonly kind: "sources";
  /** Of many pages that cite a source the first are named, and the number of the others. */
  readonly sources: readonly (SourceEntry & { readonly cited: readonly Link[] })[];
}

export function sourcesPage(index: CatalogueIndex): SourcesPage {
  const { collection, words } = index;
  const say = words.pages.sources;
  const citations = new Map(
    Object.entries(
      joinedCitations([
        ...index.listed.map(({ cited }) => cited),
        citedByTexts(
          collection.articles.map(({ id, title, text }) => [
            { address: addresses.article(id), name: title },
            text,
          ]),
        ),
      ]),
    ),
  );
  const citedIn = (source: string): Link[] => {
    const { pages, count } = citations.get(source) ?? { pages: [], count: 0 };
    return count > pages.length
      ? [...pages, { address: "", name: say.andMore(count - pages.length) }]
      : [...pages];
  };
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
      cited: citedIn(source.id),
    })),
  };
}
