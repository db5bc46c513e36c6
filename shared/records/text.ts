import { type EdtfDate, parseEdtf } from "../dates/edtf-interval.ts";

/** What a person may have typed where a name is meant: `118` is as good as `"118"`. */
export type Typed = string | number | boolean;

export const asText = (value: Typed | undefined): string | undefined =>
  value === undefined ? undefined : String(value).normalize("NFC");

export const asList = <Value>(value: Value | readonly Value[] | null | undefined): readonly Value[] =>
  value === undefined || value === null ? [] : Array.isArray(value) ? value : [value as Value];

/** Where a date that every record of a kind has does not fit: nothing is known of it, neither of its ends. */
export const unknownDate: EdtfDate = {
  text: "",
  earliest: null,
  latestStart: null,
  earliestEnd: null,
  latest: null,
  uncertain: false,
  approximate: false,
};

/** The schema has already refused what is not EDTF. */
export const asDate = (value: string | number | undefined | null): EdtfDate | undefined =>
  value === undefined || value === null ? undefined : (parseEdtf(String(value)) ?? undefined);
