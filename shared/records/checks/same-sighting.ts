import type { Sighting } from "../sighting.ts";

/** Letters typed in two ways, ends of lines and spaces around a text make no difference. */
export const oneForm = (text: string): string => text.normalize("NFC").replace(/\r\n?/g, "\n").trim();

/** All that a row of the log says, so that the same row is known again. */
export const sightingKey = (row: Sighting): string =>
  JSON.stringify(
    [
      row.seen.text,
      row.variant,
      row.serial,
      row.example,
      row.source,
      row.kind,
      row.list,
      row.present,
      row.absent,
      row.condition,
      row.price,
      row.currency,
      row.relisted,
      row.note,
    ].map((value) => (typeof value === "string" ? oneForm(value) : value)),
  );
