import { buildSearchIndex } from "../../shared/pages/search/build-search-index.ts";
import { findEntries, type Searched, shardsFor } from "../../shared/pages/search/find-entries.ts";
import { openWords } from "../../shared/pages/search/match-word.ts";
import { openCatalogue, openDetails } from "../../shared/pages/search/open-catalogue.ts";
import { readState } from "../../shared/pages/search/view-state.ts";
import type { PublishedCollection } from "../../shared/publication/published.ts";
import { catalogueOf } from "../collections/collection.ts";

export interface OpenSearch {
  /** Ids of the entries that an address asks for, in order. */
  readonly ask: (address: string) => string[];
  readonly instead: (address: string) => readonly { typed: string; taken: readonly string[] }[];
  readonly ofParts: (address: string) => readonly { typed: string; taken: readonly string[] }[];
}

/** The search as a browser has it: by way of JSON, with every file fetched. */
export function openSearch(collection: PublishedCollection): OpenSearch {
  const built = JSON.parse(JSON.stringify(buildSearchIndex(catalogueOf(collection)))) as ReturnType<
    typeof buildSearchIndex
  >;
  const catalogue = openCatalogue({
    ...built.index,
    details: "",
    shards: built.files.map(({ prefix }) => ({ prefix, address: prefix })),
  });
  const searched: Searched = {
    catalogue,
    details: openDetails(built.details, built.index.count),
    textsFor: (word) => shardsFor(built.files, word).map(openWords),
  };
  const find = (address: string) => findEntries(searched, readState(address), true);
  return {
    ask: (address) => find(address).entries.map((entry) => catalogue.ids[entry] ?? ""),
    instead: (address) => find(address).instead,
    ofParts: (address) => find(address).ofParts,
  };
}
