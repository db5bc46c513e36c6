import type { PublishedItem } from "../../publication/published.ts";
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

function partOf(item: PublishedItem, id: string, units: number, gain: number, words: Words): PartOfItem {
  return {
    part: {
      address: `${addresses.item(item.id)}#part-${id}`,
      name: item.parts.find((part) => part.id === id)?.name ?? id,
    },
    item: { address: addresses.item(item.id), name: item.title },
    variant: { address: addresses.variant(item.variant.id), name: item.variant.name },
    doubt: contradictionOf(item, words),
    units: words.numbers.count(units),
    gain,
    adds: words.numbers.share(gain),
  };
}

const counted = (parts: readonly PartOfItem[]): WantedParts => joinedParts([{ parts, count: parts.length }]);

export const wantedParts = (items: readonly PublishedItem[], words: Words): WantedParts =>
  counted(
    items
      .filter(isAtHand)
      .flatMap((item) => item.wants.map((want) => partOf(item, want.part, want.units, want.gain, words))),
  );

export const spareParts = (items: readonly PublishedItem[], words: Words): WantedParts =>
  counted(
    items
      .filter(isAtHand)
      .flatMap((item) => item.spares.map(({ part, units }) => partOf(item, part, units, 0, words))),
  );
