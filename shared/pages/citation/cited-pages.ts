import { mentionsIn } from "../../prose/mentions.ts";
import type { PublishedFamily, PublishedItem, PublishedVariant } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";

/** By source, the pages that rest on it: those that a bibliography has room to name, and how many there are. */
export type CitedPages = Readonly<
  Record<string, { readonly pages: readonly Link[]; readonly count: number }>
>;

/** Of a source that a whole catalogue rests on the first are enough. */
const mostPages = 24;

/** The sources that a text cites, in its order. */
export const citedIn = (text: string | null): string[] =>
  mentionsIn(text ?? "").flatMap((mention) => (mention.kind === "citation" ? [mention.cite.source] : []));

export function joinedCitations(lists: readonly CitedPages[]): CitedPages {
  const found = new Map<string, { pages: Link[]; count: number }>();
  for (const [source, { pages, count }] of lists.flatMap((list) => Object.entries(list))) {
    const known = found.get(source) ?? { pages: [], count: 0 };
    known.pages.push(...pages.slice(0, mostPages - known.pages.length));
    known.count += count;
    found.set(source, known);
  }
  return Object.fromEntries(found);
}

/** For every source of some records, the page of each that cites it, once. */
function gathered(records: Iterable<readonly [Link, Iterable<string | null>]>): CitedPages {
  const found = new Map<string, { pages: Link[]; count: number }>();
  for (const [page, sources] of records) {
    for (const source of new Set(sources)) {
      if (source === null) continue;
      const known = found.get(source) ?? { pages: [], count: 0 };
      if (known.pages.length < mostPages) known.pages.push(page);
      known.count++;
      found.set(source, known);
    }
  }
  return Object.fromEntries(found);
}

export const citedByTexts = (texts: readonly (readonly [Link, string])[]): CitedPages =>
  gathered(texts.map(([page, text]) => [page, citedIn(text)]));

/** What a family's own page, those of its variants, their logs and their items rest on. */
export function citedByFamily(
  family: PublishedFamily,
  variants: readonly PublishedVariant[],
  items: readonly PublishedItem[],
  { words }: CollectionIndex,
): CitedPages {
  const say = words.pages.sources;
  const own: [Link, (string | null)[]][] = [
    [
      { address: addresses.family(family.id), name: family.name },
      [...family.sources, ...citedIn(family.description)],
    ],
  ];
  const logs: CitedPages[] = [];
  for (const variant of variants) {
    own.push([
      { address: addresses.variant(variant.id), name: variant.name },
      [
        ...variant.sources,
        ...citedIn(variant.description),
        ...citedIn(variant.note),
        ...[...variant.serials, ...variant.parts.flatMap(({ serials }) => serials)].map(
          ({ source }) => source,
        ),
        ...variant.rarity.made.sources,
      ],
    ]);
    const counts = new Map<string, number>();
    for (const { source } of variant.sightings)
      if (source !== null) counts.set(source, (counts.get(source) ?? 0) + 1);
    const address = addresses.sightingsOf(variant.id);
    logs.push(
      gathered(
        [...counts].map(([source, count]) => [
          { address, name: say.sightings(count, variant.name) },
          [source],
        ]),
      ),
    );
  }
  const byItems = gathered(
    items.map((item) => [
      { address: addresses.item(item.id), name: item.title },
      [...item.provenance.events.map(({ source }) => source), ...citedIn(item.description)],
    ]),
  );
  return joinedCitations([gathered(own), ...logs, byItems]);
}
