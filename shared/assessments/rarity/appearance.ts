import { calendarYears } from "../../dates/calendar-years.ts";
import type { EdtfDate } from "../../dates/edtf-interval.ts";
import type { Sighting } from "../../records/sighting.ts";
import { poissonRate } from "../../statistics/poisson-rate.ts";
import { waitingTime } from "../../statistics/waiting-time.ts";
import { type Basis, type Figure, figure, withheld } from "../figure.ts";
import { type Statement, statement } from "../statement.ts";

/** The calendar years, first and last included, in which offers were watched for. */
export interface YearsWatched {
  readonly first: number;
  readonly last: number;
  /** False where nobody states them, and the log stands for them. */
  readonly declared: boolean;
}

/** Null where an end is open or not known: then no year can be said to hold it. */
function yearsOf(date: EdtfDate): { first: number; last: number } | null {
  const { first, last } = calendarYears(date);
  return first !== null && last !== null && Number.isFinite(first) && Number.isFinite(last)
    ? { first, last }
    : null;
}

/** What of a sighting tells in which years somebody kept a log. */
export interface Dated {
  readonly seen: EdtfDate;
  /** As in the log, where it may be a word that is none. */
  readonly kind: string;
}

/** The years that are stated or, where nobody states any, those of the log. */
export function yearsWatched(watching: EdtfDate | undefined, log: Iterable<Dated>): YearsWatched | null {
  const stated = watching && yearsOf(watching);
  return stated ? { ...stated, declared: true } : yearsOfLog(log);
}

/**
 * From the first year of the log to its last. That an old book mentions one says of no year that anybody watched, nor does
 * a date of a century ("19XX"): mentions tell only where there are no offers and no records, and of these those dated to
 * more than a year only where none is dated to one.
 */
function yearsOfLog(log: Iterable<Dated>): YearsWatched | null {
  const dated = [...log].flatMap(({ seen, kind }) => {
    const years = yearsOf(seen);
    return years ? { ...years, kind } : [];
  });
  const told = thoseOrAll(dated, ({ kind }) => kind !== "mention");
  const spans = thoseOrAll(told, ({ first, last }) => first === last);
  if (spans.length === 0) return null;
  const first = spans.reduce((least, span) => Math.min(least, span.first), Number.POSITIVE_INFINITY);
  const last = spans.reduce((most, span) => Math.max(most, span.last), Number.NEGATIVE_INFINITY);
  return { first, last, declared: false };
}

/** Those of which it holds, or all where it holds of none. */
function thoseOrAll<Each>(all: readonly Each[], holds: (each: Each) => boolean): readonly Each[] {
  const those = all.filter(holds);
  return those.length > 0 ? those : all;
}

/** A new offer, seen wholly within the years watched. */
export function isCountedOffer(row: Sighting, watched: YearsWatched | null): boolean {
  if (row.kind !== "offer" || row.relisted || !watched) return false;
  const years = yearsOf(row.seen);
  return years !== null && years.first >= watched.first && years.last <= watched.last;
}

/** How many offers there were, and who tells of them. */
export interface Offers {
  readonly count: number;
  readonly sources: Iterable<string | undefined>;
  /**
   * Where only some outfits are asked about: how many offers there were of any outfit, and for how many of them it is
   * recorded whether it was of such a one.
   */
  readonly among?: { readonly all: number; readonly decided: number };
}

/** How many it is not recorded of. */
const undecidedOf = ({ among }: Offers): number => (among ? among.all - among.decided : 0);

export const offersIn = (rows: readonly Sighting[]): Offers => ({
  count: rows.length,
  sources: rows.map(({ source }) => source),
});

/** Where as much is left out as counts, or more, the figure may be half of what it should be, and nobody should lean on it. */
function namingUndecided(all: number, undecided: number): Statement[] {
  if (undecided === 0) return [];
  const areMany = undecided >= all - undecided;
  return [statement(areMany ? "many-offers-undecided" : "offers-undecided", { all, undecided })];
}

/** Where there was none, both figures tell of the years alone, and nobody should read more into them. */
const namingUnseen = (offers: Offers, years: number): Statement[] =>
  offers.count === 0 ? [statement("no-offer-seen", { years })] : [];

function basisOf(
  offers: Offers,
  watched: YearsWatched | null,
  confidence: number,
): Omit<Basis, "unit" | "method"> {
  const undecided = undecidedOf(offers);
  const { all, decided } = offers.among ?? { all: offers.count, decided: offers.count };
  return {
    confidence,
    inputs: {
      offers: offers.count,
      years: countYears(watched),
      firstYear: watched?.first ?? null,
      lastYear: watched?.last ?? null,
      ...(undecided > 0 ? { offersOfAny: all, offersRecorded: decided } : {}),
    },
    sources: offers.sources,
    caveats: [
      ...(decided > 0 ? namingUndecided(all, undecided) : []),
      statement("assumes-constant-rate"),
      ...(watched && !watched.declared ? [statement("years-from-log")] : []),
    ],
  };
}

const countYears = (watched: YearsWatched | null): number => (watched ? watched.last - watched.first + 1 : 0);

/** Why nothing can be said of how often or when; null where something can. */
function whyNot({ among }: Offers, years: number): Statement | null {
  if (years === 0) return statement("no-year-watched");
  if (among && among.all > 0 && among.decided === 0)
    return statement("no-offer-decided", { offers: among.all });
  return null;
}

/** Offers a year. */
export function assessAppearance(offers: Offers, watched: YearsWatched | null, confidence: number): Figure {
  return fromOffers(offers, watched, poissonRate, {
    ...basisOf(offers, watched, confidence),
    unit: "offers a year",
    method: "garwood",
  });
}

/** Years until the next. `nothing` is why it cannot even be said what is waited for. */
export function assessWait(
  offers: Offers,
  watched: YearsWatched | null,
  confidence: number,
  nothing: Statement | null = null,
): Figure {
  const basis: Basis = { ...basisOf(offers, watched, confidence), unit: "years", method: "gamma-poisson" };
  return nothing ? withheld(nothing, basis) : fromOffers(offers, watched, waitingTime, basis);
}

function fromOffers(
  offers: Offers,
  watched: YearsWatched | null,
  estimate: typeof waitingTime,
  basis: Basis,
): Figure {
  const years = countYears(watched);
  const why = whyNot(offers, years);
  if (why) return withheld(why, basis);
  const caveats = [...namingUnseen(offers, years), ...(basis.caveats ?? [])];
  return figure(estimate(offers.count, years, basis.confidence), { ...basis, caveats });
}
