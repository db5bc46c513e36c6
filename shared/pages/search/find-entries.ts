import { fold } from "../../diagnostics/fold.ts";
import { statuses } from "../../terms/states.ts";
import { verdicts } from "../../terms/verdicts.ts";
import { askedNumber } from "./asked-numbers.ts";
import { wordsIn } from "./folded-words.ts";
import { matchWord, type OpenWords, type WordMatch } from "./match-word.ts";
import { meansAsked } from "./named-apart.ts";
import { nearWords } from "./near-words.ts";
import type { OpenCatalogue, OpenDetails } from "./open-catalogue.ts";
import { someRising } from "./packed-numbers.ts";
import { partsNamed } from "./part-words.ts";
import { percentOfStep } from "./share-steps.ts";
import { spellingsOf } from "./spellings.ts";
import type { ViewState } from "./view-state.ts";

export interface Found {
  /** Entries by their place in the catalogue, in the order asked for. */
  readonly entries: readonly number[];
  /** Words that nothing has, with those that were taken instead. */
  readonly instead: readonly Instead[];
  /** Words that no entry says, with the names of parts that have them. */
  readonly ofParts: readonly Instead[];
  /** Whether a word may be in the name of a part, but the details are not at hand. */
  readonly needsParts: boolean;
}

interface Instead {
  readonly typed: string;
  readonly taken: readonly string[];
}

/** What has been fetched so far. */
export interface Searched {
  readonly catalogue: OpenCatalogue;
  readonly details: OpenDetails | null;
  /** The files in which a word may be. */
  readonly textsFor: (word: string) => readonly OpenWords[];
}

/** The words typed, each once, folded. */
export const wordsTyped = (q: string): string[] => [...new Set(wordsIn(fold(q)))];

/** The same with every spelling that may be meant: the words whose texts must be at hand. */
export const wordsMeant = (q: string, { index }: OpenCatalogue): string[] => [
  ...new Set(wordsTyped(q).flatMap((word) => spellingsOf(word, index.language))),
];

type Test = (entry: number) => boolean;

const placeOf = (list: readonly { readonly id: string }[], id: string): number =>
  list.findIndex((each) => each.id === id);

/** Whether the details must be at hand. */
export const needsDetails = (state: ViewState): boolean => state.missing !== "" || state.place !== "";

/** One test for each thing asked; what is asked and is not in the catalogue lets nothing through. */
function testsOf(catalogue: OpenCatalogue, details: OpenDetails | null, state: ViewState): Test[] {
  const { index, columns } = catalogue;
  const tests: Test[] = [];
  const ofVariant = (asked: string, is: (variant: (typeof index.variants)[number]) => boolean) => {
    if (asked === "") return;
    const lets = index.variants.map(is);
    tests.push((entry) => lets[columns.variant[entry] ?? -1] ?? false);
  };
  const equals = (asked: string, column: readonly number[], wanted: number) => {
    if (asked !== "") tests.push((entry) => column[entry] === wanted);
  };
  const isWord = (asked: string, column: readonly number[], words: readonly string[]) =>
    equals(asked, column, words.indexOf(asked));
  const has = (
    asked: string,
    lines: readonly string[],
    wanted: (place: number, entry: number) => boolean,
  ) => {
    if (asked !== "") tests.push((entry) => someRising(lines[entry] ?? "", (at) => wanted(at, entry)));
  };

  const family = placeOf(index.families, state.family);
  ofVariant(state.family, (variant) => variant.family === family);
  ofVariant(state.variant, ({ id }) => id === state.variant);
  const classed = placeOf(index.classes, state.class);
  ofVariant(state.class, ({ classes }) => classes.includes(classed));
  if (state.level !== "") {
    const lets = index.levels.map(({ id }) => meansAsked(state.level, id));
    tests.push((entry) => lets[(columns.level[entry] ?? 0) - 1] ?? false);
  }
  isWord(state.evidence, columns.verdict, verdicts);
  isWord(state.status, columns.status, statuses);

  const hazard = placeOf(index.hazards, state.hazard);
  has(state.hazard, catalogue.hazards, (at) => at === hazard);
  if (!details) {
    // What cannot be tested yet lets nothing through, or all would seem to answer.
    if (needsDetails(state)) tests.push(() => false);
  } else {
    const { parts, places } = details.details;
    has(state.missing, details.missing, (at, entry) =>
      meansAsked(state.missing, parts[columns.variant[entry] ?? -1]?.[at]?.id ?? ""),
    );
    const wanted = spellingsOf(fold(state.place), index.language);
    const answers = places.map((place) => wanted.some((each) => fold(place).includes(each)));
    has(state.place, details.places, (at) => answers[at] ?? false);
  }

  const limit = (
    field: "least" | "most",
    column: readonly number[],
    holds: (percent: number, asked: number) => boolean,
  ) => {
    const number = askedNumber(field, state[field]);
    if (number !== null)
      tests.push((entry) => {
        const step = column[entry] ?? 0;
        return step > 0 && holds(percentOfStep(step - 1), number);
      });
  };
  limit("least", columns.low, (percent, asked) => percent >= asked);
  limit("most", columns.high, (percent, asked) => percent <= asked);

  const [from, to] = [askedNumber("from", state.from), askedNumber("to", state.to)];
  if (from !== null || to !== null) {
    const lets = index.years.map(
      ([first, last]) =>
        (first !== null || last !== null) &&
        (from === null || last === null || last >= from) &&
        (to === null || first === null || first <= to),
    );
    tests.push((entry) => lets[columns.year[entry] ?? -1] ?? false);
  }
  return tests;
}

type Compare = (a: number, b: number) => number;

/** What is not known comes last, whichever way the order runs. */
const by = (keyOf: (entry: number) => number | null): Compare => {
  return (a, b) => {
    const [first, second] = [keyOf(a), keyOf(b)];
    if (first === second) return 0;
    if (first === null) return 1;
    return second === null ? -1 : first - second;
  };
};

const known = (number: number | undefined): number | null => (number ? number : null);

function orderOf(catalogue: OpenCatalogue, state: ViewState, scores: Uint16Array | null): Compare | null {
  const { index, columns } = catalogue;
  const descending = (column: readonly number[]) =>
    by((entry) => (column[entry] ? -(column[entry] ?? 0) : null));
  switch (state.sort) {
    case "title": {
      const order = catalogue.titleOrder();
      return by((entry) => order[entry] ?? 0);
    }
    case "complete": {
      const [low, high] = [descending(columns.low), descending(columns.high)];
      return (a, b) => low(a, b) || high(a, b);
    }
    case "year":
      return by((entry) => index.years[columns.year[entry] ?? -1]?.[0] ?? null);
    case "rare":
      return by((entry) => index.variants[columns.variant[entry] ?? -1]?.survivors ?? null);
    case "place":
      return by((entry) => known(columns.place[entry]));
    default:
      return scores && by((entry) => -(scores[entry] ?? 0));
  }
}

/** Every word of the catalogue's own that a slip may have been made in. */
const vocabularies = new WeakMap<OpenCatalogue, ReadonlySet<string>>();
export function vocabularyOf(catalogue: OpenCatalogue): ReadonlySet<string> {
  const known = vocabularies.get(catalogue);
  if (known) return known;
  const words = new Set(wordsIn(catalogue.heads));
  for (const text of catalogue.variantTexts) for (const word of wordsIn(text)) words.add(word);
  vocabularies.set(catalogue, words);
  return words;
}

/** How well each entry answers to any of several words. */
function best(matches: readonly WordMatch[]): WordMatch {
  const [first, ...more] = matches;
  if (first === undefined || more.length === 0) return first ?? { scores: new Uint8Array(), any: false };
  const scores = first.scores.map((score, entry) =>
    Math.max(score, ...more.map((each) => each.scores[entry] ?? 0)),
  );
  return { scores, any: matches.some(({ any }) => any) };
}

function* wordsOf(catalogue: OpenCatalogue, texts: readonly OpenWords[]): Generator<string> {
  yield* vocabularyOf(catalogue);
  for (const { words } of texts) yield* words;
}

/**
 * The entries that answer to all that was asked. Every word must be there, in the title, the serial, the set
 * number, the names of the variant, or in the texts that were fetched for it. With `mend`, a word that nothing has
 * is looked for in the names of parts, and else is taken for the nearest ones.
 */
export function findEntries(
  { catalogue, details, textsFor }: Searched,
  state: ViewState,
  mend: boolean,
): Found {
  const { count } = catalogue.index;
  const instead: Instead[] = [];
  const ofParts: Instead[] = [];
  let needsParts = false;
  let scores: Uint16Array | null = null;
  for (const word of wordsTyped(state.q)) {
    const texts = textsFor(word);
    let match = best(
      spellingsOf(word, catalogue.index.language).map((each) =>
        matchWord(catalogue, each, each === word ? texts : textsFor(each)),
      ),
    );
    if (!match.any && mend) {
      needsParts ||= details === null;
      const parts = details && partsNamed(catalogue, details, word);
      if (parts) {
        ofParts.push({ typed: word, taken: parts.names });
        match = { scores: parts.scores, any: true };
      }
    }
    if (!match.any && mend) {
      const taken = nearWords(word, wordsOf(catalogue, texts));
      if (taken.length > 0) {
        instead.push({ typed: word, taken });
        match = best(taken.map((near) => matchWord(catalogue, near, textsFor(near))));
      }
    }
    if (scores === null) scores = Uint16Array.from(match.scores);
    else {
      for (let entry = 0; entry < count; entry++) {
        const [before, now] = [scores[entry] ?? 0, match.scores[entry] ?? 0];
        scores[entry] = before > 0 && now > 0 ? before + now : 0;
      }
    }
  }

  const tests = testsOf(catalogue, details, state);
  const entries: number[] = [];
  for (let entry = 0; entry < count; entry++) {
    if ((scores === null || (scores[entry] ?? 0) > 0) && tests.every((lets) => lets(entry)))
      entries.push(entry);
  }
  const order = orderOf(catalogue, state, scores);
  if (order) entries.sort((a, b) => order(a, b) || a - b);
  return { entries, instead, ofParts, needsParts };
}

/** The files whose words may begin like this one: of those that cut its beginning, the one that cuts most. */
export function shardsFor<Shard extends { readonly prefix: string }>(
  shards: readonly Shard[],
  word: string,
): readonly Shard[] {
  const above = shards.filter(({ prefix }) => word.startsWith(prefix));
  const longest = Math.max(-1, ...above.map(({ prefix }) => prefix.length));
  const below =
    word.length > 2
      ? shards.filter(({ prefix }) => prefix.length > word.length && prefix.startsWith(word))
      : [];
  return [...above.filter(({ prefix }) => prefix.length === longest), ...below];
}
