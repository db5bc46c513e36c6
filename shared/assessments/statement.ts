import type { EdtfDate } from "../dates/edtf-interval.ts";

/**
 * Something that an assessment has to say in words: why a figure is withheld, what it takes for granted.
 * The words themselves are in shared/words, one file a language.
 */
export interface Statement {
  readonly says: StatementId;
  readonly values: Readonly<Record<string, string | number>>;
}

export type StatementId =
  // Why a figure is withheld
  | "no-sighting"
  | "one-sighting"
  | "no-example-recorded"
  | "every-example-seen-once"
  | "not-two-lists"
  | "lists-below-known"
  | "nothing-recorded-of-part"
  | "no-part-in-reference"
  | "no-part-issued"
  | "no-part-examined"
  | "nobody-to-compare"
  | "no-year-watched"
  | "no-offer-decided"
  | "made-unknown"
  | "made-only-a-range"
  | "serials-skipped"
  | "too-few-serials"
  | "made-withheld"
  | "survivors-withheld"
  | "survivors-exceed-made"
  // What a figure takes for granted
  | "coverage-of-none-again"
  | "assumes-even-chance"
  | "assumes-independent-sightings"
  | "assumes-independent-lists"
  | "assumes-random-serials"
  | "assumes-constant-rate"
  | "assumes-share-independent"
  | "lower-bound-only"
  | "serials-in-several-blocks"
  | "serials-not-shown"
  | "sightings-differ"
  | "serials-misread"
  | "serial-not-read"
  | "serial-shared"
  | "known-exceed-made"
  | "estimate-exceeds-made"
  | "counts-contradicted"
  | "counts-assembled"
  | "less-destroyed"
  | "nameless-rows"
  | "many-nameless-rows"
  | "left-out-of-level"
  | "joint-confidence"
  | "counted-in-by-certain-part"
  | "no-offer-seen"
  | "offers-as-known-now"
  | "offers-undecided"
  | "many-offers-undecided"
  | "lists-share-nothing"
  | "at-least-known"
  | "years-from-log"
  | "dates-as-written";

export const statement = (says: StatementId, values: Statement["values"] = {}): Statement => ({
  says,
  values,
});

/** What is counted from dates that are marked `?`, `~` or `%` is no surer than they are. */
export const datesAsWritten = (dates: readonly EdtfDate[]): Statement[] =>
  dates.some(({ uncertain, approximate }) => uncertain || approximate) ? [statement("dates-as-written")] : [];
