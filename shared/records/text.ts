import { type EdtfDate, parseEdtf } from "../dates/edtf-interval.ts";

/** What a person may have typed where a name is meant: `118` is as good as `"118"`. */
export type Typed = string | number | boolean;

export const asText = (value: Typed | undefined): string | undefined =>
  value === undefined ? undefined : String(value).normalize("NFC");

export const asList = <Value>(value: Value | readonly Value[] | null | undefined): readonly Value[] =>
  value === undefined || value === null ? [] : Array.isArray(value) ? value : [value as Value];

/** The schema has already refused what is not EDTF. */
export const asDate = (value: string | number | undefined | null): EdtfDate | undefined =>
  value === undefined || value === null ? undefined : (parseEdtf(String(value)) ?? undefined);
