import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { suggestion } from "../../diagnostics/nearest-name.ts";
import { yamlRecord } from "../../source/record-file.ts";
import type { JsonSchema } from "../../source/record-schemas.ts";
import { diagnoseErrors } from "../../validation/diagnose-errors.ts";
import { createValidator } from "../../validation/validator.ts";
import type { Decimal } from "../../validation/written/read-number.ts";
import type { DateOrder } from "../../validation/written/read-single-date.ts";
import { type Encoding, encodings } from "./decoded-text.ts";
import { fieldsOf, type TableKind } from "./fields.ts";
import type { Column } from "./headings.ts";
import type { Separator } from "./sheet.ts";

/** Where the value of a field comes from: columns, with their own words translated, or the same for every row. */
export interface Reading {
  readonly columns: readonly string[];
  readonly always: string | undefined;
  readonly values: ReadonlyMap<string, string | null>;
  /** What parts the names in a cell of several. */
  readonly separator: string | undefined;
}

export interface Mapping {
  readonly kind: TableKind;
  readonly encoding: Encoding | undefined;
  readonly separator: Separator | undefined;
  readonly headingRows: readonly number[] | undefined;
  readonly dates: DateOrder | undefined;
  readonly twoDigitYearsFrom: number | undefined;
  readonly decimal: Decimal | undefined;
  readonly fields: ReadonlyMap<string, Reading>;
  /** Columns of their own, one a part or a feature. */
  readonly parts: ReadonlyMap<string, Reading>;
  readonly features: ReadonlyMap<string, Reading>;
}

export const separatorNames: Readonly<Record<string, Separator>> = { comma: ",", semicolon: ";", tab: "\t" };

const reading = {
  type: ["string", "array", "object"],
  items: { type: "string" },
  properties: {
    column: { type: ["string", "array"], items: { type: "string" } },
    always: { type: ["string", "number", "boolean"] },
    values: {
      type: ["object", "null"],
      additionalProperties: { type: ["string", "number", "boolean", "null"] },
    },
    separator: { type: "string", minLength: 1 },
  },
  additionalProperties: false,
};

const readings = (names: readonly string[] | null) => ({
  type: ["object", "null"],
  ...(names
    ? { properties: Object.fromEntries(names.map((name) => [name, reading])), additionalProperties: false }
    : { additionalProperties: reading }),
});

const mapSchema = (kind: TableKind): JsonSchema => ({
  $id: `https://fittedcase.example/import/${kind}.schema.json`,
  type: "object",
  properties: {
    import: { enum: [kind] },
    sheet: {
      type: ["object", "null"],
      properties: {
        encoding: { enum: [...encodings] },
        separator: { enum: Object.keys(separatorNames) },
        headings: { type: "array", items: { type: "integer", minimum: 1 }, maxItems: 2 },
      },
      additionalProperties: false,
    },
    dates: { enum: ["day-month", "month-day", "edtf", null] },
    "two-digit-years-from": { type: ["integer", "null"], minimum: 1000, maximum: 2900 },
    decimal: { enum: [".", ",", null] },
    columns: readings(fieldsOf(kind).map(({ name }) => name)),
    parts: readings(null),
    features: readings(null),
  },
  required: ["import"],
  additionalProperties: false,
});

type RawReading =
  | string
  | string[]
  | {
      column?: string | string[];
      always?: string | number | boolean;
      values?: Record<string, string | number | boolean | null> | null;
      separator?: string;
    };

interface RawMapping {
  import: TableKind;
  sheet?: { encoding?: Encoding; separator?: string; headings?: number[] } | null;
  dates?: DateOrder | null;
  "two-digit-years-from"?: number | null;
  decimal?: Decimal | null;
  columns?: Record<string, RawReading> | null;
  parts?: Record<string, RawReading> | null;
  features?: Record<string, RawReading> | null;
}

function readingFrom(raw: RawReading): Reading {
  if (typeof raw === "string" || Array.isArray(raw)) {
    return { columns: [raw].flat(), always: undefined, values: new Map(), separator: undefined };
  }
  return {
    columns: [raw.column ?? []].flat(),
    always: raw.always === undefined ? undefined : String(raw.always),
    values: new Map(
      Object.entries(raw.values ?? {}).map(([from, to]) => [from, to === null ? null : String(to)]),
    ),
    separator: raw.separator,
  };
}

const readingsFrom = (raw: Record<string, RawReading> | null | undefined): ReadonlyMap<string, Reading> =>
  new Map(Object.entries(raw ?? {}).map(([name, each]) => [name, readingFrom(each)]));

export type MappingResult = { readonly mapping: Mapping } | { readonly diagnostics: readonly Diagnostic[] };

/** Reads a map that was proposed and, it may be, corrected. */
export function readMapping(file: string, text: string, kind: TableKind): MappingResult {
  const { document, diagnostics } = yamlRecord(file, text);
  if (!document) return { diagnostics };
  const errors = createValidator(new Map()).by(mapSchema(kind))(document);
  if (errors.length > 0) return { diagnostics: diagnoseErrors(document, errors) };
  const raw = document.data as RawMapping;
  return {
    mapping: {
      kind,
      encoding: raw.sheet?.encoding,
      separator: raw.sheet?.separator === undefined ? undefined : separatorNames[raw.sheet.separator],
      headingRows: raw.sheet?.headings,
      dates: raw.dates ?? undefined,
      twoDigitYearsFrom: raw["two-digit-years-from"] ?? undefined,
      decimal: raw.decimal ?? undefined,
      fields: readingsFrom(raw.columns),
      parts: readingsFrom(raw.parts),
      features: readingsFrom(raw.features),
    },
  };
}

/** Every heading that a map names. */
export const headingsRead = ({ fields, parts, features }: Mapping): ReadonlySet<string> =>
  new Set([fields, parts, features].flatMap((group) => [...group.values()].flatMap((each) => each.columns)));

/** The first heading that a map names and the sheet does not have, as a sentence. */
export function strangeHeading(mapping: Mapping, columns: readonly Column[]): string | undefined {
  const headings = columns.map(({ heading }) => heading);
  for (const readings of [mapping.fields, mapping.parts, mapping.features]) {
    for (const { columns: named } of readings.values()) {
      const strange = named.find((heading) => !headings.includes(heading));
      if (strange === undefined) continue;
      return `Found "${strange}" in the map; expected a heading of the spreadsheet. ${suggestion(strange, headings) ?? ""}`.trimEnd();
    }
  }
  return undefined;
}
