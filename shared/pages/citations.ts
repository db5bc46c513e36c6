import { mentionsIn } from "../prose/mentions.ts";
import { addresses } from "./addresses.ts";
import type { CollectionIndex } from "./collection-index.ts";
import type { Link } from "./page.ts";

/** The sources that a text cites, in its order. */
export const citedIn = (text: string | null): string[] =>
  mentionsIn(text ?? "").flatMap((mention) => (mention.kind === "citation" ? [mention.cite.source] : []));

/** For every source, the pages that rest on it; each once. */
export function citationsOf(index: CollectionIndex): ReadonlyMap<string, readonly Link[]> {
  const { collection, words } = index;
  const say = words.pages.sources;
  const found = new Map<string, Map<string, Link>>();
  const cite = (source: string | null, link: Link) => {
    if (source === null) return;
    const links = found.get(source) ?? new Map<string, Link>();
    if (!links.has(link.address)) links.set(link.address, link);
    found.set(source, links);
  };
  const citeAll = (sources: readonly string[], link: Link) => {
    for (const source of sources) cite(source, link);
  };

  for (const family of collection.families) {
    const link = { address: addresses.family(family.id), name: family.name };
    citeAll(family.sources, link);
    citeAll(citedIn(family.description), link);
  }
  for (const variant of collection.variants) {
    const link = { address: addresses.variant(variant.id), name: variant.name };
    citeAll([...variant.sources, ...citedIn(variant.description), ...citedIn(variant.note)], link);
    for (const { source } of variant.serials) cite(source, link);
    for (const { source } of variant.parts.flatMap(({ serials }) => serials)) cite(source, link);
    citeAll(variant.rarity.made.sources, link);
    const counts = new Map<string, number>();
    for (const { source } of variant.sightings) {
      if (source !== null) counts.set(source, (counts.get(source) ?? 0) + 1);
    }
    for (const [source, count] of counts) {
      cite(source, { address: addresses.sightingsOf(variant.id), name: say.sightings(count, variant.name) });
    }
  }
  for (const item of collection.items) {
    const link = { address: addresses.item(item.id), name: item.title };
    for (const { source } of item.provenance.events) cite(source, link);
    citeAll(citedIn(item.description), link);
  }
  for (const article of collection.articles) {
    citeAll(citedIn(article.text), { address: addresses.article(article.id), name: article.title });
  }
  return new Map([...found].map(([source, links]) => [source, [...links.values()]]));
}
