import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import { asDate, asList, asText, type Typed, unknownDate } from "./text.ts";

export interface Sighting {
  readonly seen: EdtfDate;
  readonly variant: string;
  readonly serial: string | undefined;
  readonly example: string | undefined;
  readonly source: string | undefined;
  readonly kind: "offer" | "record" | "mention";
  readonly list: string | undefined;
  /** Part ids, and `rest` for all that neither list names. */
  readonly present: readonly string[];
  readonly absent: readonly string[];
  readonly condition: string | undefined;
  readonly price: number | undefined;
  readonly currency: string | undefined;
  readonly relisted: boolean;
  readonly note: string | undefined;
  readonly document: SourceDocument;
}

interface RawSighting {
  seen: string | number;
  variant: string;
  serial?: Typed;
  example?: Typed;
  source?: string;
  kind: Sighting["kind"];
  list?: Typed;
  present?: string | string[];
  absent?: string | string[];
  condition?: string;
  price?: number;
  currency?: string;
  relisted?: boolean;
  note?: string;
}

/** A CSV cell holds a list with semicolons between; YAML may use a list of its own. */
export const partNames = (written: string | readonly string[] | undefined): readonly string[] =>
  asList(written)
    .flatMap((each) => each.split(";"))
    .map((each) => each.trim())
    .filter((each) => each !== "");

export function sightingFrom(document: SourceDocument): Sighting {
  const raw = document.data as RawSighting;
  return {
    seen: asDate(raw.seen) ?? unknownDate,
    variant: raw.variant,
    serial: asText(raw.serial),
    example: asText(raw.example),
    source: raw.source,
    kind: raw.kind,
    list: asText(raw.list),
    present: partNames(raw.present),
    absent: partNames(raw.absent),
    condition: raw.condition,
    price: raw.price,
    currency: raw.currency,
    relisted: raw.relisted ?? false,
    note: raw.note,
    document,
  };
}

/** "3.000" may be three, or three thousand; in the few currencies that have thousandths it is three. */
const isUnclear = (price: string, currency = ""): boolean =>
  /^-?[1-9]\d{0,2}\.\d{3}$/.test(price) && !thousandths.has(currency.toUpperCase());

/** Currencies with three decimals (ISO 4217). */
const thousandths: ReadonlySet<string> = new Set(["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"]);

/** The states that CSV cells spell out as text, before the schema sees them. */
export function typedCells(cells: ReadonlyMap<string, string>): Record<string, unknown> {
  const row: Record<string, unknown> = Object.fromEntries(cells);
  const price = cells.get("price");
  if (price !== undefined && /^-?\d+(?:\.\d+)?$/.test(price) && !isUnclear(price, cells.get("currency")))
    row.price = Number(price);
  const relisted = cells.get("relisted")?.toLowerCase();
  if (relisted === "true" || relisted === "false") row.relisted = relisted === "true";
  return row;
}
