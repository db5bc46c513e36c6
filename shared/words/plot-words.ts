import type { CalendarYears } from "../dates/calendar-years.ts";
import type { Sighting } from "../records/sighting.ts";
import type { GapLength } from "./gap-length.ts";
import type { Words } from "./words.ts";

export type SightingKind = Sighting["kind"];

/** Who did what with an outfit, and where; null where nobody says, or nobody may. */
export interface CustodyInWords {
  readonly event: string;
  readonly from: string | null;
  readonly to: string | null;
  readonly holder: string | null;
  readonly place: string | null;
}

/** Every word that a drawing says of itself, in one language. Numbers and dates arrive already written. */
export interface PlotWords {
  readonly casePlan: {
    /** A part as its compartment names it: with its quantity where there is more than one. */
    readonly part: (name: string, quantity: number) => string;
    /** The name of a compartment's link; a plan of what was issued has no states. */
    readonly partState: (part: string, state: string | null) => string;
    /** The same where the compartment bears a number in place of the name. */
    readonly keyed: (key: string, partState: string) => string;
  };
  readonly completeness: {
    readonly certain: (share: string) => string;
    readonly possible: (share: string) => string;
    /** `possible` is null where nothing is uncertain. */
    readonly description: (certain: string, possible: string | null) => string;
  };
  readonly partRates: {
    readonly withheld: string;
    /** What the axis measures. */
    readonly axis: string;
    readonly part: (part: string, rate: string) => string;
    readonly description: (parts: readonly string[]) => string;
  };
  readonly serialRanges: {
    readonly own: (serial: string) => string;
    /** A range by its ends, null where one is not known. */
    readonly span: (prefix: string, from: number | null, to: number | null) => string;
    readonly made: (date: string) => string;
    readonly skipped: string;
    readonly seen: (count: string, number: number) => string;
    readonly unplaced: (count: string, number: number) => string;
    /** In a range that is drawn, but of another variant. */
    readonly misplaced: (count: string, number: number) => string;
    readonly description: (ranges: readonly string[], notes: readonly string[]) => string;
    readonly range: (span: string, facts: readonly string[]) => string;
    readonly none: string;
  };
  readonly sightings: {
    /** A kind of sighting in the plural, as a legend names it. */
    readonly kind: (kind: SightingKind) => string;
    /** Of one kind, and at most. */
    readonly each: (count: string) => string;
    readonly undated: (count: string, number: number) => string;
    readonly watching: (dates: string) => string;
    /** What is known of a level, by how far the mark is filled: that it is reached, that none is, or too little. */
    readonly surfaces: Readonly<Record<"filled" | "half" | "hollow", string>>;
    /** The same of so many. */
    readonly reach: Readonly<Record<"filled" | "half" | "hollow", (count: string, number: number) => string>>;
    readonly description: (
      total: string,
      number: number,
      kinds: readonly string[],
      years: string | null,
      reached: readonly string[],
    ) => string;
    readonly kindCount: (kind: SightingKind, count: string, number: number) => string;
    /** Of those told of, so many are the same offer once more. */
    readonly again: (count: string) => string;
    readonly span: (from: string, to: string) => string;
    readonly none: string;
  };
  readonly likeness: {
    /** What the axis measures. */
    readonly axis: string;
    readonly nearest: (name: string, share: string) => string;
    /** Of strokes that stand for more than one. */
    readonly longer: string;
    /** Of those compared on little. */
    readonly thin: (count: string, number: number) => string;
    /** Outfits of the catalogue that are not drawn. */
    readonly more: (count: string, number: number) => string;
    /** An outfit: how many others it was compared to, from the least alike to the most, and what is said besides. */
    readonly outfit: (
      name: string,
      count: string,
      number: number,
      range: string,
      facts: readonly string[],
    ) => string;
    readonly description: (outfits: readonly string[]) => string;
  };
  readonly custody: {
    readonly event: (event: CustodyInWords) => string;
    readonly issued: string;
    readonly examined: string;
    /** Years of which nothing is known. */
    readonly gap: (length: GapLength) => string;
    readonly gapBetween: (from: string, to: string, gap: string) => string;
    readonly dated: (date: string, event: string) => string;
    readonly undated: (count: string, number: number) => string;
    readonly description: (lines: readonly string[]) => string;
    readonly none: string;
  };
}

/** The part of a language's words that drawings use. */
export type WordsForPlots = Pick<Words, "numbers" | "date" | "phrase" | "interval"> & {
  readonly plots: PlotWords;
};

/** What every drawing is told. */
export interface PlotOptions {
  /** Unique in the page: ids within the drawing begin with it. */
  readonly idPrefix: string;
  /** What the drawing shows, as its accessible name. */
  readonly label: string;
  readonly words: WordsForPlots;
}

/** The calendar years that an EDTF date may reach into: infinite where open, null where not known. */
export type YearsOf = (edtf: string) => CalendarYears | null;
