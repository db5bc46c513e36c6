/**
 * The first and last month, inside the year that is named, that a sub-year grouping of EDTF may cover.
 *
 * Quarters, quadrimesters and semesters divide the calendar year. Seasons are given no months by the
 * specification. Where a hemisphere is stated the span holds both customs, the meteorological (spring of
 * the north: March to May) and the astronomical (from the equinox to the solstice in June), in whole
 * months; the season at the turn of the year covers its beginning and its end, and so the whole of it.
 * Where no hemisphere is stated, spring may be March or November: the whole year is all that is certain.
 *
 * Assumes a code of 21 to 41
 * Source  Library of Congress, EDTF (4 February 2019), Level 2 "Sub-year groupings"; the months of the
 *         seasons are common practice, no source
 */
export function subYearMonths(code: number): readonly [first: number, last: number] {
  if (code >= 40) return division(code - 40, 6);
  if (code >= 37) return division(code - 37, 4);
  if (code >= 33) return division(code - 33, 3);
  return SEASONS[code - 25] ?? WHOLE_YEAR;
}

const WHOLE_YEAR = [1, 12] as const;
const MARCH_TO_JUNE = [3, 6] as const;
const JUNE_TO_SEPTEMBER = [6, 9] as const;
const SEPTEMBER_TO_DECEMBER = [9, 12] as const;

/** Codes 25 to 32: spring, summer, autumn and winter of the north, then of the south. */
const SEASONS = [
  MARCH_TO_JUNE,
  JUNE_TO_SEPTEMBER,
  SEPTEMBER_TO_DECEMBER,
  WHOLE_YEAR,
  SEPTEMBER_TO_DECEMBER,
  WHOLE_YEAR,
  MARCH_TO_JUNE,
  JUNE_TO_SEPTEMBER,
] as const;

function division(index: number, months: number): readonly [number, number] {
  return [index * months + 1, (index + 1) * months];
}
