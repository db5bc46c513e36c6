import type { Sighting } from "../../records/sighting.ts";

/** The columns of the log, in the order of the contract. */
export const sightingColumns: Readonly<Record<string, (row: Sighting) => string | number | undefined>> = {
  seen: (row) => row.seen.text,
  variant: (row) => row.variant,
  serial: (row) => row.serial,
  example: (row) => row.example,
  source: (row) => row.source,
  kind: (row) => row.kind,
  list: (row) => row.list,
  present: (row) => row.present.join(";"),
  absent: (row) => row.absent.join(";"),
  condition: (row) => row.condition,
  price: (row) => row.price,
  currency: (row) => row.currency,
  relisted: (row) => (row.relisted ? "true" : undefined),
  note: (row) => row.note,
};

/** Every row of every log, with a heading. */
export const sightingsTable = (sightings: readonly Sighting[]): string[][] => [
  Object.keys(sightingColumns),
  ...sightings.map((row) => Object.values(sightingColumns).map((read) => String(read(row) ?? ""))),
];
