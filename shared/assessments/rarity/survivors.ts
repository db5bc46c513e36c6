import { chao1 } from "../../statistics/chao1.ts";
import { chapman } from "../../statistics/chapman.ts";
import { coverage } from "../../statistics/coverage.ts";
import { survivalRatio } from "../../statistics/survival-ratio.ts";
import { type Basis, type Figure, figure, pointFigure, withheld } from "../figure.ts";
import { type Statement, statement } from "../statement.ts";
import type { Example } from "./examples.ts";

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
export function sourcesOf(examples: readonly Example[]): ReadonlySet<string | undefined> {
  const sources = new Set<string | undefined>();
  for (const { rows } of examples) for (const { source } of rows) sources.add(source);
  return sources;
}

export function assessCoverage(examples: readonly Example[], confidence: number): Figure {
  const { sightings, once, twice } = frequenciesOf(examples);
  const isOnceOnly = sightings > 0 && once === sightings;
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "coverage",
    inputs: { sightings, once, twice },
    sources: sourcesOf(examples),
    // The published formula gives a number even then (1 for a single sighting), and nobody should lean on it.
    caveats: [
      ...(isOnceOnly ? [statement("coverage-of-none-again")] : []),
      statement("assumes-independent-sightings"),
    ],
  };
  if (sightings === 0) return withheld(statement("no-sighting"), basis);
  return pointFigure(coverage({ sightings, once, twice }), basis);
}

const countDestroyed = (examples: readonly Example[]): number =>
  examples.filter(({ isDestroyed }) => isDestroyed).length;

/** Both estimates are of all that were there to be seen: of some it is known that they are no longer. */
function countingDestroyed(examples: readonly Example[]): Statement[] {
  const destroyed = countDestroyed(examples);
  return destroyed === 0 ? [] : [statement("counts-destroyed", { examples: destroyed })];
}

/** The least number that survives, from how often the known examples turned up again. */
export function assessSurvivors(examples: readonly Example[], confidence: number): Figure {
  const frequencies = frequenciesOf(examples);
  const { sightings, distinct, once, twice } = frequencies;
  const basis: Basis = {
    unit: "examples",
    confidence,
    method: "chao1",
    inputs: { distinct, once, twice, sightings },
    sources: sourcesOf(examples),
    caveats: [
      ...countingDestroyed(examples),
      statement("lower-bound-only"),
      statement("assumes-independent-sightings"),
    ],
  };
  if (distinct === 0) return withheld(statement("no-sighting"), basis);
  if (once === sightings)
    return withheld(
      statement("every-example-seen-once", { distinct: distinct - countDestroyed(examples) }),
      basis,
    );
  return figure(chao1(frequencies, confidence), basis);
}

/** The number that survives, from how far two independent lists name the same examples. */
export function assessSurvivorsFromTwoLists(examples: readonly Example[], confidence: number): Figure {
  const names = [...new Set(examples.flatMap(({ lists }) => [...lists]))].sort();
  const [first = "", second = ""] = names;
  const on = (list: string) => examples.filter(({ lists }) => lists.has(list)).length;
  const both = examples.filter(({ lists }) => lists.has(first) && lists.has(second)).length;
  const isPair = names.length === 2;
  const inputs: Basis["inputs"] = isPair
    ? { lists: names, firstList: on(first), secondList: on(second), both }
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
          ...countingDestroyed(examples),
          statement("assumes-independent-lists"),
          ...(both === 0 ? [statement("lists-share-nothing")] : []),
        ]
      : [],
  };
  if (!isPair) return withheld(statement("not-two-lists", { lists: names.length }), basis);
  const estimate = chapman({ first: on(first), second: on(second), both }, confidence);
  // Seen elsewhere, more may be known than the two lists tell of.
  const known = examples.length;
  return figure(
    estimate,
    estimate.low < known
      ? { ...basis, caveats: [statement("at-least-known", { known }), ...(basis.caveats ?? [])] }
      : basis,
  );
}

type Most = Pick<Figure, "value" | "high">;

/** Held against the number made or, where only a range is written down, against its upper end. */
export const exceedsMade = (survivors: number | null, made: Most): boolean => {
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

/** Of those made, the share that survives. */
export function assessSurvivalRate(survivors: Figure, made: Figure, confidence: number): Figure {
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
  return figure(ends(survivors.value, made.value), basis);
}
