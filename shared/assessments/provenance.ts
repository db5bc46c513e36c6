import { yearOf } from "../dates/day-number.ts";
import type { EdtfDate } from "../dates/edtf-interval.ts";

export interface Gap {
  /** Calendar years between which nothing is documented. */
  readonly from: number;
  readonly to: number;
  /** The shortest that the gap can be, in years; dates that are uncertain may make it longer. */
  readonly years: number;
  /** The longest that the gap can be; null where an end is not known. */
  readonly longest: number | null;
}

export interface Provenance {
  /** Calendar years in which some event of its custody is documented. */
  readonly documentedYears: number;
  /** Calendar years from the first of issue to the examination; null where either is unknown. */
  readonly lifetimeYears: number | null;
  readonly gaps: readonly Gap[];
}

const daysInYear = 365.2425;
const finite = (bound: number | null): number | null =>
  bound !== null && Number.isFinite(bound) ? bound : null;

interface Dated {
  readonly date: EdtfDate;
}

/** Custody as dated events: how much of its life is documented, and where nobody knows. figures.md, section 7. */
export function assessProvenance(
  issued: EdtfDate | undefined,
  events: readonly Dated[],
  examined: EdtfDate | undefined,
): Provenance {
  const dates = events.map(({ date }) => date).filter((date) => finite(date.earliest) !== null);
  const byStart = [...dates].sort((a, b) => (a.earliest ?? 0) - (b.earliest ?? 0));
  const years = new Set<number>();
  for (const date of byStart) {
    const first = yearOf(date.earliest ?? 0);
    const last = yearOf(finite(date.latest) ?? date.earliest ?? 0);
    for (let year = first; year <= last && years.size < 10_000; year++) years.add(year);
  }

  const gaps: Gap[] = [];
  const started = issued && finite(issued.earliest) !== null ? issued : undefined;
  let before: EdtfDate | undefined = started;
  for (const date of byStart) {
    const end = before && finite(before.latest);
    const start = date.earliest;
    if (before && end !== null && end !== undefined && start !== null && start > end + 1) {
      const earliestEnd = finite(before.earliestEnd);
      const latestStart = finite(date.latestStart);
      gaps.push({
        from: yearOf(end),
        to: yearOf(start),
        years: (start - end - 1) / daysInYear,
        longest:
          earliestEnd === null || latestStart === null ? null : (latestStart - earliestEnd - 1) / daysInYear,
      });
    }
    // A custody that lasts beyond the next one's beginning leaves no gap after it.
    if (!before || end === null || end === undefined || (date.latest ?? Number.NEGATIVE_INFINITY) > end)
      before = date;
  }

  const first = finite(issued?.earliest ?? null);
  const last = finite(examined?.latest ?? null);
  return {
    documentedYears: years.size,
    lifetimeYears: first !== null && last !== null && last >= first ? yearOf(last) - yearOf(first) + 1 : null,
    gaps,
  };
}
