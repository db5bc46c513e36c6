import type { Gap } from "../assessments/provenance.ts";
import type { NumberWords } from "./numbers.ts";

/** How long no custody is recorded, in years as they are written. */
export interface GapLength {
  /** The fewest that it can be. */
  readonly shortest: string;
  /** The most; null where that is not known, or where its dates leave no choice. */
  readonly longest: string | null;
  readonly isSure: boolean;
}

/**
 * Of days between two events of one hand nobody would say that none is recorded between; nor of months of a year in which
 * both lie, and which is documented by them.
 */
export const isWorthTelling = ({ from, to, years }: Pick<Gap, "from" | "to" | "years">): boolean =>
  from < to && years >= 1 / 12;

const halfADay = 0.5 / 365;

export function gapLength(
  { years, longest }: { readonly years: number; readonly longest: number | null },
  { span }: Pick<NumberWords, "span">,
): GapLength {
  const isSure = longest !== null && longest - years < halfADay;
  return {
    shortest: span(years, isSure ? undefined : "least"),
    longest: longest === null || isSure ? null : span(longest, "most"),
    isSure,
  };
}
