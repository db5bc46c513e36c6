import { yearOf } from "../dates/day-number.ts";
import { type DayBound, type EdtfDate, parseEdtf } from "../dates/edtf-interval.ts";
import { inclusiveList } from "../dates/inclusive-list.ts";
import { yearsBetween } from "../dates/years-between.ts";
import { datesAsWritten, type Statement } from "./statement.ts";

export interface Gap {
  /** Calendar years between which no custody is documented. */
  readonly from: number;
  readonly to: number;
  /** The shortest that the gap can be, in years; dates that are uncertain may make it longer. */
  readonly years: number;
  /** The longest that the gap can be; null where an end is not known. */
  readonly longest: number | null;
}

export interface Provenance {
  /** Calendar years of its life in which an event of its custody or its examination lies, whenever within their dates. */
  readonly documentedYears: number;
  /** Calendar years from the first of issue to the last in which it is certain to have been there; null where either is unknown. */
  readonly lifetimeYears: number | null;
  readonly gaps: readonly Gap[];
  readonly caveats: readonly Statement[];
}

const finite = (bound: DayBound): number | null => (Number.isFinite(bound) ? bound : null);

interface Dated {
  readonly date: EdtfDate;
}

/**
 * Custody as dated events, of which the examination is one: how many years of its life some event tells of, and
 * between which none does.
 */
export function assessProvenance(
  issued: EdtfDate | undefined,
  events: readonly Dated[],
  examined: EdtfDate | undefined,
): Provenance {
  const dates = [...events.map(({ date }) => date), ...(examined ? [examined] : [])].flatMap(occasions);
  // What has no beginning, or none that is known, may have been there from the first.
  const byStart = dates.sort((a, b) => (a.earliest ?? -Infinity) - (b.earliest ?? -Infinity) || 0);
  const lastKnown = lastDayOf(dates);
  const life = lifeOf(issued, lastKnown);
  return {
    documentedYears: documentedYears(byStart, life, lastKnown),
    lifetimeYears: life && life.last - life.first + 1,
    gaps: gapsBetween([...issueOf(issued, dates), ...byStart]),
    caveats: datesAsWritten([...(issued ? [issued] : []), ...dates]),
  };
}

/** What happened in each year of a list happened in no other. */
const occasions = (date: EdtfDate): EdtfDate[] =>
  inclusiveList(date.text).flatMap((text) => parseEdtf(text) ?? []);

/**
 * The issue of one outfit, as an event on some day in the years in which its variant was issued, and no later than
 * the first that is known of it. None where the years of issue are not known, or something of it is known before
 * them.
 */
function issueOf(issued: EdtfDate | undefined, dates: readonly EdtfDate[]): EdtfDate[] {
  const earliest = finite(issued?.earliest ?? null);
  if (!issued || earliest === null) return [];
  const known = [issued.latest, ...dates.map((date) => finite(date.latestStart) ?? date.latest)];
  const latest = Math.min(...known.map((day) => day ?? Number.POSITIVE_INFINITY));
  if (latest < earliest) return [];
  return [{ ...issued, latestStart: latest, earliestEnd: earliest, latest: finite(latest) }];
}

/**
 * Whether a custody is over. Nobody can say so of one whose end is not known, unless another followed that began after it
 * whenever both did.
 */
const isOver = ({ latest, latestStart }: EdtfDate, sofar: readonly EdtfDate[]): boolean =>
  latest !== null ||
  (latestStart !== null && sofar.some((next) => next.earliest !== null && next.earliest > latestStart));

/**
 * A gap is where all that came before has ended, at the latest, before anything that follows begins, at the earliest.
 * It lasts at most from the latest of the earliest ends before it to the earliest of the latest beginnings after it.
 */
function gapsBetween(dates: readonly EdtfDate[]): Gap[] {
  const gaps: Gap[] = [];
  for (const [at, { earliest }] of dates.entries()) {
    const start = finite(earliest);
    const [before, after] = [dates.slice(0, at), dates.slice(at)];
    if (start === null || at === 0 || !before.every((each) => isOver(each, before))) continue;
    const end = Math.max(...before.map(({ latest }) => latest ?? Number.NEGATIVE_INFINITY));
    if (start <= end + 1) continue;
    const earliestEnd = Math.max(...before.map((date) => date.earliestEnd ?? Number.NEGATIVE_INFINITY));
    const latestStart = Math.min(...after.map((date) => date.latestStart ?? Number.POSITIVE_INFINITY));
    gaps.push({
      from: yearOf(end),
      to: yearOf(start),
      years: yearsBetween(end + 1, start),
      longest: Number.isFinite(latestStart - earliestEnd) ? yearsBetween(earliestEnd + 1, latestStart) : null,
    });
  }
  return gaps;
}

interface Years {
  readonly first: number;
  readonly last: number;
}

/**
 * The last day on which it was there, whenever its events were within their dates: each has ended at the earliest then.
 * What has not ended goes on when it has begun, at the latest.
 */
const lastDayOf = (dates: readonly EdtfDate[]): number | null =>
  dates
    .map(
      ({ earliest, latestStart, earliestEnd }) =>
        finite(earliestEnd === Number.POSITIVE_INFINITY ? latestStart : earliestEnd) ?? finite(earliest),
    )
    .filter((day) => day !== null)
    .reduce<number | null>((last, day) => Math.max(last ?? day, day), null);

/** From the first year of issue to the last that is known; null where either is not. */
function lifeOf(issued: EdtfDate | undefined, last: number | null): Years | null {
  const first = finite(issued?.earliest ?? null);
  return first !== null && last !== null && last >= first
    ? { first: yearOf(first), last: yearOf(last) }
    : null;
}

/**
 * The least number of different years of its life in which the events can lie. What lasted counts from the
 * latest day on which it may have begun to the earliest on which it may have ended; what has not ended lasts
 * to the last day that is known. Of what began nobody knows when, only the end counts. An event in some year of several
 * counts one, and none where a year among them is documented anyway: taken by their last years, that is the fewest
 * (interval stabbing).
 */
function documentedYears(dates: readonly EdtfDate[], life: Years | null, until: number | null): number {
  const years = new Set<number>();
  const isLived = (year: number) => life === null || (life.first <= year && year <= life.last);
  const vague: Years[] = [];
  for (const { earliest, latestStart, earliestEnd, latest } of dates) {
    const [start, end] = [latestStart, earliestEnd].map((bound) =>
      bound === Number.POSITIVE_INFINITY ? until : bound,
    );
    const [first, last] = [yearOfKnown(start, latest), yearOfKnown(end, earliest)];
    if (first > last) vague.push({ first: yearOfKnown(earliest, end), last: yearOfKnown(latest, start) });
    for (let year = first; year <= last && years.size < 10_000; year++) if (isLived(year)) years.add(year);
  }
  for (const { first, last } of vague.sort((a, b) => a.last - b.last)) {
    const latest = life ? Math.min(last, life.last) : last;
    // It may lie before its life.
    if (!isLived(first)) continue;
    if (![...years].some((year) => first <= year && year <= last)) years.add(latest);
  }
  return years.size;
}

/** The year of the first of two days that is known; of what has always been there none is. */
function yearOfKnown(...days: readonly (DayBound | undefined)[]): number {
  const known = days.find((day) => Number.isFinite(day));
  return typeof known === "number" ? yearOf(known) : Number.NEGATIVE_INFINITY;
}
