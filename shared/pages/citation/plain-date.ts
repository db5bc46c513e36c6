/**
 * One year, month or day of the calendar, its numbers in groups: what EDTF and ISO 8601 write alike. A season, which
 * EDTF has in the place of a month, is none, nor is anything vaguer.
 */
export const plainDate = /^(\d{4})(?:-(0[1-9]|1[0-2])(?:-(\d{2}))?)?$/;

/** For programs that take ISO 8601 and nothing else of EDTF; null where it is something else. */
export const isoDate = (edtf: string | null): string | null =>
  edtf !== null && plainDate.test(edtf) ? edtf : null;
