import { yearOf } from "../dates/day-number.ts";
import { type DayBound, parseEdtf } from "../dates/edtf-interval.ts";
import type { YearsOf } from "../words/plot-words.ts";

const year = (bound: DayBound): number | null =>
  bound === null || !Number.isFinite(bound) ? bound : yearOf(bound);

export const yearsOf: YearsOf = (edtf) => {
  const date = parseEdtf(edtf);
  return date && { first: year(date.earliest), last: year(date.latest) };
};
