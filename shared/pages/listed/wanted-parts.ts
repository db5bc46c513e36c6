import type { PublishedItem, PublishedWant } from "../../publication/published.ts";
import { isAtHand } from "../../terms/states.ts";
import type { Words } from "../../words/words.ts";
import { addresses } from "../addresses/addresses.ts";
import type { Link } from "../page.ts";
import { contradictionOf } from "../views/contradiction.ts";

/** A part of an item: wanted there, or to spare. */
export interface PartOfItem {
  readonly part: Link;
  readonly item: Link;
  readonly variant: Link;
  /** A word where the evidence speaks against that variant, to whose parts it is held. */
  readonly doubt: string | null;
  readonly units: string;
  /** What it would add, for the order and in words. */
  readonly gain: number;
  readonly adds: string;
}

/** Those that a page has room for, and how many there are. */
export interface WantedParts {
  readonly parts: readonly PartOfItem[];
  readonly count: number;
}

/** As many as somebody can look through at a fair; an outfit's own page has all of its own. */
const mostParts = 200;

/** What would add most comes first. */
export function joinedParts(lists: readonly WantedParts[]): WantedParts {
  const all = lists.flatMap(({ parts }) => parts).sort((a, b) => b.gain - a.gain);
  return { parts: all.slice(0, mostParts), count: lists.reduce((sum, { count }) => sum + count, 0) };
}

/** What it would add to the completeness of its case; of what is counted apart, the levels that need it. */
export function whatItAdds(
  { levels }: PublishedItem,
  { gain, neededFor }: PublishedWant,
  words: Words,
): string {
  if (gain > 0) return words.numbers.share(gain);
  const names = levels.filter(({ id }) => neededFor.includes(id)).map(({ name }) => name);
  return words.pages.item.neededFor(words.pages.list(names));
}

const partOf = (
  item: PublishedItem,
  { part: id, units }: Pick<PublishedWant, "part" | "units">,
  words: Words,
): Omit<PartOfItem, "gain" | "adds"> => ({
  part: {
    address: `${addresses.item(item.id)}#part-${id}`,
    name: item.parts.find((part) => part.id === id)?.name ?? id,
  },
  item: { address: addresses.item(item.id), name: item.title },
  variant: { address: addresses.variant(item.variant.id), name: item.variant.name },
  doubt: contradictionOf(item, words),
  units: words.numbers.count(units),
});

const counted = (parts: readonly PartOfItem[]): WantedParts => joinedParts([{ parts, count: parts.length }]);

export const wantedParts = (items: readonly PublishedItem[], words: Words): WantedParts =>
  counted(
    items.filter(isAtHand).flatMap((item) =>
      item.wants.map((want) => ({
        ...partOf(item, want, words),
        gain: want.gain,
        adds: whatItAdds(item, want, words),
      })),
    ),
  );

export const spareParts = (items: readonly PublishedItem[], words: Words): WantedParts =>
  counted(
    items
      .filter(isAtHand)
      .flatMap((item) => item.spares.map((spare) => ({ ...partOf(item, spare, words), gain: 0, adds: "" }))),
  );
