import fc from "fast-check";
import { type EdtfDate, parseEdtf } from "../../../shared/dates/edtf-interval.ts";
import type { Feature } from "../../../shared/records/family.ts";
import type { PartLine } from "../../../shared/records/item.ts";
import type { SerialRange } from "../../../shared/records/serial.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import type { Part, Variant } from "../../../shared/records/variant.ts";
import type { SourceDocument } from "../../../shared/source/document.ts";

/** Where a record stands is of no account to what is computed from it. */
const document = {} as SourceDocument;

export function date(text: string): EdtfDate {
  const read = parseEdtf(text);
  if (!read) throw new Error(`"${text}" is no date.`);
  return read;
}

export const part = (id: string, more: Partial<Part> = {}): Part => ({
  id,
  name: id,
  group: undefined,
  standing: "issued",
  quantity: 1,
  weight: 1,
  serials: [],
  marks: [],
  hazards: [],
  accepts: new Map(),
  plan: undefined,
  look: undefined,
  note: undefined,
  ...more,
});

export const variant = (
  id: string,
  { parts = [], ...more }: Partial<Omit<Variant, "parts">> & { readonly parts?: readonly Part[] } = {},
): Variant => ({
  id,
  family: "chest",
  name: id,
  extends: undefined,
  issued: undefined,
  made: undefined,
  serials: [],
  features: new Map(),
  levels: [],
  description: undefined,
  note: undefined,
  sources: [],
  formerly: [],
  revisions: [],
  document,
  ...more,
  parts: new Map(parts.map((each) => [each.id, each])),
});

export const line = (state: PartLine["state"], more: Partial<PartLine> = {}): PartLine => ({
  state,
  quantity: undefined,
  rest: undefined,
  serial: undefined,
  marks: [],
  condition: undefined,
  packed: undefined,
  repairs: [],
  belongs: undefined,
  model: undefined,
  evidence: undefined,
  note: undefined,
  private: [],
  ...more,
});

export const range = (more: Partial<SerialRange>): SerialRange => ({
  prefix: "",
  from: undefined,
  to: undefined,
  made: undefined,
  skipped: false,
  source: undefined,
  page: undefined,
  note: undefined,
  ...more,
});

export const feature = (id: string, values: readonly string[], effort = 1): Feature => ({
  id,
  name: id,
  values,
  effort,
  look: undefined,
  note: undefined,
});

export const sighting = (more: Partial<Sighting>): Sighting => ({
  seen: date("2001"),
  variant: "a",
  serial: undefined,
  example: undefined,
  source: undefined,
  kind: "record",
  list: undefined,
  present: [],
  absent: [],
  condition: undefined,
  price: undefined,
  currency: undefined,
  relisted: false,
  note: undefined,
  document,
  ...more,
});

const values = ["x", "y", "z"];

/** Three features and up to five variants, each found with some of the values of each, or nobody knows which. */
export const families = fc
  .array(fc.array(fc.option(fc.subarray(values, { minLength: 1 })), { minLength: 3, maxLength: 3 }), {
    minLength: 1,
    maxLength: 5,
  })
  .map((table) => ({
    features: new Map(["f", "g", "h"].map((id, at) => [id, feature(id, values, 1 + at)])),
    variants: table.map((row, at) =>
      variant(`v${at}`, {
        features: new Map(
          row.flatMap((found, of) => (found ? [[["f", "g", "h"][of] as string, found]] : [])),
        ),
      }),
    ),
  }));

export const observations = fc
  .record(
    { f: fc.constantFrom(...values), g: fc.constantFrom(...values), h: fc.constantFrom(...values) },
    {
      requiredKeys: [],
    },
  )
  .map((seen) => new Map(Object.entries(seen)));
