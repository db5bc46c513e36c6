import { calendarYears } from "../../dates/calendar-years.ts";
import { parseEdtf } from "../../dates/edtf-interval.ts";
import type { YearsOf } from "../../words/plot-words.ts";

/** The years of a date, as the plots place it. */
export const yearsOf: YearsOf = (edtf) => {
  const date = parseEdtf(edtf);
  return date && calendarYears(date);
};
