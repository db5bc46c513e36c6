import { addUnder } from "../../lists/grouping.ts";
import { isCountedOffer, type Offers, type YearsWatched } from "./appearance.ts";
import type { Example } from "./examples.ts";
import { isNameless, type Nameless, namelessOf } from "./nameless.ts";
import { sourcesOfExamples } from "./survivors.ts";

/** Sums of the same weights in another order differ by less than this. */
const rounding = 1e-9;

/** An item, by what it is known as, and its certain, weighted completeness. */
interface Ranked {
  readonly id: string;
  readonly keys: readonly string[];
  readonly certain: number | null;
}

/** The examples of a variant that an item is held against, less those that are the item itself. */
interface Besides {
  readonly others: number;
  /** How many of them are at least as complete, and how many more complete. */
  readonly asComplete: number;
  readonly above: number;
  /** How many of those at least as complete were made up with parts of another case. */
  readonly assembled: number;
  /** How many of those at least as complete are known to be no longer there. */
  readonly destroyed: number;
  /** How many of those at least as complete may be of one seen before. */
  readonly nameless: number;
  /** Of all that it is held against. */
  readonly rowsCompared: Nameless;
  readonly sources: Iterable<string | undefined>;
}

/** The fully recorded examples of a variant, the most complete first: put in order once, and asked by every item. */
export interface RankedExamples {
  readonly watched: YearsWatched | null;
  readonly besides: (item: Ranked) => Besides;
  /** Counted offers of examples that are at least as complete, among those of any. */
  readonly offersAsComplete: (certain: number | null) => Offers;
}

const shareOf = ({ recordedCompleteness }: Example): number => recordedCompleteness ?? Number.NaN;
const isAsComplete = (share: number, certain: number): boolean => share >= certain - rounding;
const isAbove = (share: number, certain: number): boolean => share > certain + rounding;

export function rankExamples(examples: readonly Example[], watched: YearsWatched | null): RankedExamples {
  const ranked = examples
    .filter(({ recordedCompleteness }) => recordedCompleteness !== null)
    .sort((a, b) => shareOf(b) - shareOf(a));
  const shares = ranked.map(shareOf);
  /** How many of the first in order keep to a condition that the rest do not. */
  const countWhile = (holds: (share: number) => boolean): number => {
    let [from, to] = [0, shares.length];
    while (from < to) {
      const middle = (from + to) >>> 1;
      if (holds(shares[middle] ?? 0)) from = middle + 1;
      else to = middle;
    }
    return from;
  };

  const named = new Map<string, Example[]>();
  const citing = new Map<string | undefined, number>();
  const offers: number[] = [0];
  /** After each example how many of them are of a kind. */
  const countedUp = (is: (example: Example) => boolean): number[] => {
    const counts = [0];
    for (const example of ranked) counts.push((counts.at(-1) ?? 0) + Number(is(example)));
    return counts;
  };
  const isAssembled = (example: Example) => example.isAssembled;
  const isDestroyed = (example: Example) => example.isDestroyed;
  const assembled = countedUp(isAssembled);
  const destroyed = countedUp(isDestroyed);
  const nameless = countedUp(isNameless);
  const inAll = namelessOf(ranked);
  /** After how many examples a source first tells of an offer. */
  const tellsAfter = new Map<string | undefined, number>();
  for (const [at, example] of ranked.entries()) {
    for (const name of [...example.items.map(itemName), ...example.keys]) addUnder(named, name, example);
    for (const source of sourcesOfExamples([example])) citing.set(source, (citing.get(source) ?? 0) + 1);
    let count = offers[at] ?? 0;
    for (const row of example.rows) {
      if (!isCountedOffer(row, watched)) continue;
      count++;
      if (!tellsAfter.has(row.source)) tellsAfter.set(row.source, at);
    }
    offers.push(count);
  }
  const offersOfAny = examples.reduce(
    (sum, { rows }) => sum + rows.filter((row) => isCountedOffer(row, watched)).length,
    0,
  );

  return {
    watched,
    besides: ({ id, keys, certain }) => {
      // An item left out of the census may still be in the log; it is never held against itself.
      const own = new Set([itemName(id), ...keys].flatMap((name) => named.get(name) ?? []));
      const others = (holds: (share: number) => boolean): number =>
        countWhile(holds) - [...own].filter((example) => holds(shareOf(example))).length;
      const citedByOwn = [...own].flatMap((example) => [...sourcesOfExamples([example])]);
      const isCitedBeside = (source: string | undefined, count: number) =>
        count > citedByOwn.filter((cited) => cited === source).length;
      /** Of those at least as complete, how many are of a kind. */
      const among = (counts: readonly number[], is: (example: Example) => boolean): number => {
        if (certain === null) return 0;
        const holds = (share: number) => isAsComplete(share, certain);
        const ofOwn = [...own].filter((example) => is(example) && holds(shareOf(example))).length;
        return (counts[countWhile(holds)] ?? 0) - ofOwn;
      };
      return {
        others: ranked.length - own.size,
        asComplete: certain === null ? 0 : others((share) => isAsComplete(share, certain)),
        above: certain === null ? 0 : others((share) => isAbove(share, certain)),
        assembled: among(assembled, isAssembled),
        destroyed: among(destroyed, isDestroyed),
        nameless: among(nameless, isNameless),
        // It has a name itself, and so has whatever is tied to it.
        rowsCompared: { ...inAll, rows: inAll.rows - namelessOf([...own]).rows },
        sources: [...citing].flatMap(([source, count]) => (isCitedBeside(source, count) ? [source] : [])),
      };
    },
    offersAsComplete: (certain) => {
      const among = certain === null ? 0 : countWhile((share) => isAsComplete(share, certain));
      return {
        count: offers[among] ?? 0,
        among: { all: offersOfAny, decided: offers.at(-1) ?? 0 },
        sources: [...tellsAfter].flatMap(([source, at]) => (at < among ? [source] : [])),
      };
    },
  };
}

/** No key of a sighting begins like this. */
const itemName = (id: string): string => `item ${id}`;
