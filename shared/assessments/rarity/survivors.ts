import { chao1 } from "../../statistics/chao1.ts";
import { chapman } from "../../statistics/chapman.ts";
import { coverage } from "../../statistics/coverage.ts";
import type { Estimate } from "../../statistics/interval.ts";
import { survivalRatio } from "../../statistics/survival-ratio.ts";
import { type Basis, type Figure, figure, jointConfidence, pointFigure, withheld } from "../figure.ts";
import { type Statement, statement } from "../statement.ts";
import type { Example } from "./examples.ts";
import { countKnown, namelessInput, namelessOf, namingNameless, namingNamelessAmong } from "./nameless.ts";

/** How often the examples of a variant were seen: all that the estimates of survivors rest on. */
export interface Frequencies {
  readonly sightings: number;
  readonly distinct: number;
  readonly once: number;
  readonly twice: number;
}

export function frequenciesOf(examples: readonly Example[]): Frequencies {
  const seen = (times: number) => examples.filter((example) => example.sightings === times).length;
  return {
    sightings: examples.reduce((sum, example) => sum + example.sightings, 0),
    distinct: examples.length,
    once: seen(1),
    twice: seen(2),
  };
}

/** Each once: a figure asks for them of every item, among all examples of its variant. */
export function sourcesOfExamples(examples: readonly Example[]): ReadonlySet<string | undefined> {
  const sources = new Set<string | undefined>();
  for (const { rows } of examples) for (const { source } of rows) sources.add(source);
  return sources;
}

export function assessCoverage(examples: readonly Example[], confidence: number): Figure {
  const { sightings, distinct, once, twice } = frequenciesOf(examples);
  const nameless = namelessOf(examples);
  const isOnceOnly = sightings > 1 && once === sightings;
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "coverage",
    inputs: { sightings, once, twice, ...namelessInput(nameless) },
    sources: sourcesOfExamples(examples),
    // The published formula gives a number even then, and nobody should lean on it.
    caveats: [
      ...(isOnceOnly ? [statement("coverage-of-none-again")] : []),
      ...namingNamelessAmong(nameless, distinct),
      statement("assumes-independent-sightings"),
    ],
  };
  if (sightings === 0) return withheld(statement("no-sighting"), basis);
  // Of which the same formula would say that nothing is left to be seen.
  if (sightings === 1) return withheld(statement("one-sighting"), basis);
  return pointFigure(coverage({ sightings, once, twice }), basis);
}

export const countDestroyed = (examples: readonly Example[]): number =>
  examples.filter(({ isDestroyed }) => isDestroyed).length;

/** Both estimates are of all that were there to be seen, less those of which it is known that they are no longer. */
function lessDestroyed({ value, low, high }: Estimate, destroyed: number): Estimate {
  const less = (count: number) => Math.max(0, count - destroyed);
  return { value: less(value), low: less(low), high: less(high) };
}

/** How many those are, as an input and as a caveat, where there are any. */
const destroyedInput = (destroyed: number): Readonly<Record<string, number>> =>
  destroyed === 0 ? {} : { destroyed };
const destroyedCaveat = (destroyed: number): Statement[] =>
  destroyed === 0 ? [] : [statement("less-destroyed", { examples: destroyed })];

/** The least number that survives, from how often the known examples turned up again. */
export function assessSurvivors(examples: readonly Example[], confidence: number): Figure {
  const frequencies = frequenciesOf(examples);
  const { sightings, distinct, once, twice } = frequencies;
  const destroyed = countDestroyed(examples);
  const nameless = namelessOf(examples);
  const basis: Basis = {
    unit: "examples",
    confidence,
    method: "chao1",
    inputs: {
      distinct,
      once,
      twice,
      sightings,
      ...destroyedInput(destroyed),
      ...namelessInput(nameless),
    },
    sources: sourcesOfExamples(examples),
    caveats: [
      ...destroyedCaveat(destroyed),
      ...namingNamelessAmong(nameless, distinct),
      statement("lower-bound-only"),
      statement("assumes-independent-sightings"),
    ],
  };
  if (distinct === 0) return withheld(statement("no-sighting"), basis);
  if (once === sightings)
    return withheld(statement("every-example-seen-once", { known: countKnown(examples) - destroyed }), basis);
  return figure(lessDestroyed(chao1(frequencies, confidence), destroyed), basis);
}

/** How many are on record, where the low end lies below that as a page writes it (shared/words/numbers.ts): 24.57 is read as 25. */
export const knownAboveLow = (low: number, known: number): Statement[] =>
  Math.round(low) < known ? [statement("at-least-known", { known })] : [];

/** The number that survives, from how far two independent lists name the same examples. */
export function assessSurvivorsFromTwoLists(examples: readonly Example[], confidence: number): Figure {
  const names = [...new Set(examples.flatMap(({ lists }) => [...lists]))].sort();
  const [first = "", second = ""] = names;
  const on = (list: string) => examples.filter(({ lists }) => lists.has(list)).length;
  const both = examples.filter(({ lists }) => lists.has(first) && lists.has(second)).length;
  const isPair = names.length === 2;
  const destroyed = countDestroyed(examples);
  const nameless = namelessOf(examples.filter(({ lists }) => lists.size > 0));
  const inputs: Basis["inputs"] = isPair
    ? {
        lists: names,
        firstList: on(first),
        secondList: on(second),
        both,
        ...destroyedInput(destroyed),
        ...namelessInput(nameless),
      }
    : { lists: names };
  const basis: Basis = {
    unit: "examples",
    confidence,
    method: "chapman",
    inputs,
    sources: examples.flatMap(({ rows }) =>
      rows.filter(({ list }) => list !== undefined).map(({ source }) => source),
    ),
    caveats: isPair
      ? [
          ...destroyedCaveat(destroyed),
          ...namingNameless(nameless),
          statement("assumes-independent-lists"),
          ...(both === 0 ? [statement("lists-share-nothing")] : []),
        ]
      : [],
  };
  if (!isPair) return withheld(statement("not-two-lists", { lists: names.length }), basis);
  const seen = chapman({ first: on(first), second: on(second), both }, confidence);
  // Seen elsewhere, more may be known than the two lists tell of, and more than they allow for.
  const known = countKnown(examples);
  if (seen.high < known)
    return withheld(statement("lists-below-known", { known, high: Math.floor(seen.high) }), basis);
  const estimate = lessDestroyed(seen, destroyed);
  const caveats = [...knownAboveLow(estimate.low, known - destroyed), ...(basis.caveats ?? [])];
  return figure(estimate, { ...basis, caveats });
}

type Most = Pick<Figure, "value" | "high">;

/** Held against the number made or, where only a range is written down, against its upper end. */
const exceedsMade = (survivors: number | null, made: Most): boolean => {
  const most = made.value ?? made.high;
  return survivors !== null && most !== null && survivors > most;
};

/**
 * Where more are estimated to survive than were made, both figures say so: one of them, or the record, is wrong. Where
 * more are known than were made there need be no estimate.
 */
export function namingConflict(survivors: Figure, known: number, made: Figure): Figure {
  const isKnown = exceedsMade(known, made);
  if (!isKnown && !exceedsMade(survivors.value, made)) return survivors;
  const most = made.value ?? made.high ?? 0;
  const conflict: Statement = isKnown
    ? statement("known-exceed-made", { known, made: most })
    : statement("estimate-exceeds-made", { made: most });
  return { ...survivors, caveats: [conflict, ...survivors.caveats] };
}

/** Where some are counted only since they are catalogued as what the evidence speaks against, the figure says so. */
export function namingDoubt(survivors: Figure, contradicted: number): Figure {
  if (contradicted === 0) return survivors;
  return {
    ...survivors,
    caveats: [statement("counts-contradicted", { examples: contradicted }), ...survivors.caveats],
  };
}

/** What is said of both figures, and leaves no ratio of them. */
const conflicts: ReadonlySet<string> = new Set(["known-exceed-made", "estimate-exceeds-made"]);

/** Of those made, the share that survives. A record of how many were made is no estimate, and takes nothing from its confidence. */
export function assessSurvivalRate(survivors: Figure, made: Figure): Figure {
  const isEstimated = made.method === "serial-ranges" && made.low !== made.high;
  const confidence = isEstimated
    ? jointConfidence(survivors.confidence, made.confidence)
    : survivors.confidence;
  const inputs = {
    survivors: { value: survivors.value, low: survivors.low, high: survivors.high },
    made: { value: made.value, low: made.low, high: made.high },
  };
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "survival-ratio",
    inputs,
    sources: [...survivors.sources, ...made.sources],
    caveats: [...survivors.caveats.filter(({ says }) => !conflicts.has(says)), ...made.caveats],
  };
  if (survivors.value === null || survivors.low === null || survivors.high === null) {
    return withheld(statement("survivors-withheld"), basis);
  }
  if (made.low === null || made.high === null || made.low <= 0)
    return withheld(statement("made-withheld"), basis);
  if (exceedsMade(survivors.value, made)) return withheld(statement("survivors-exceed-made"), basis);
  const ends = (value: number, made_: number) =>
    survivalRatio(
      { value, low: survivors.low ?? value, high: survivors.high ?? value },
      { value: made_, low: made.low ?? made_, high: made.high ?? made_ },
    );
  if (made.value === null) {
    const { low, high } = ends(survivors.value, made.high);
    return {
      ...withheld(statement("made-only-a-range", { low: made.low, high: made.high }), basis),
      low,
      high,
    };
  }
  const rate = figure(ends(survivors.value, made.value), basis);
  return isEstimated ? namingJoint(rate) : rate;
}

/** A figure whose interval is made from two that are estimated says so. */
export const namingJoint = (joint: Figure): Figure => ({
  ...joint,
  caveats: [statement("joint-confidence", { confidence: joint.confidence }), ...joint.caveats],
});
