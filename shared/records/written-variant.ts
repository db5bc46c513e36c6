import type { SourceDocument } from "../source/document.ts";
import type { LeftOut } from "../source/left-out.ts";
import type { Standing } from "../terms/states.ts";
import { type RawRevisions, revisionsFrom } from "./revision.ts";
import { type RawSerialRange, serialRange } from "./serial.ts";
import { asDate, asList, asText, type Typed } from "./text.ts";
import type { Part, Variant } from "./variant.ts";

export interface RawPart {
  name?: string;
  group?: string;
  standing?: Standing;
  quantity?: number;
  weight?: number;
  serials?: RawSerialRange[];
  marks?: Typed | Typed[];
  hazards?: string[];
  accepts?: { model?: string; credit?: number }[];
  plan?: [number, number, number, number];
  look?: string;
  note?: string;
}

/** A variant as its reference is written; null takes away what it would have from another. */
export interface RawVariant {
  id?: string;
  name: string;
  extends?: string;
  issued?: string | number;
  made?: {
    count?: number;
    low?: number;
    high?: number;
    source?: string;
    page?: string | number;
    note?: string;
  } | null;
  serials?: RawSerialRange[] | null;
  features?: Record<string, Typed | Typed[] | null>;
  parts?: Record<string, RawPart | null>;
  levels?: {
    id: string;
    name: string;
    needs?: { standing?: Standing[]; parts?: string[]; groups?: string[] };
  }[];
  description?: string;
  note?: string;
  sources?: string[];
  formerly?: string[];
  revisions?: RawRevisions;
}

export interface VariantFile {
  readonly id: string;
  readonly family: string;
  readonly document: SourceDocument;
}

/** A variant with all that it takes from another. */
export interface Resolved {
  readonly raw: RawVariant;
  readonly leftOut: LeftOut | undefined;
}

export const formerlyOf = ({ data }: SourceDocument): readonly string[] =>
  asList((data as RawVariant).formerly);

export function variantOf(file: VariantFile, { raw, leftOut }: Resolved): Variant {
  const made = raw.made ?? undefined;
  const present = <Value>(map: Record<string, Value | null> | undefined) =>
    Object.entries(map ?? {}).filter((entry): entry is [string, Value] => entry[1] !== null);
  return {
    id: file.id,
    family: file.family,
    name: raw.name,
    extends: (file.document.data as RawVariant).extends,
    issued: asDate(raw.issued),
    made: made && {
      low: made.count ?? made.low ?? 0,
      high: made.count ?? made.high ?? 0,
      source: made.source,
      page: asText(made.page),
      note: made.note,
    },
    serials: asList(raw.serials).map(serialRange),
    features: new Map(present(raw.features).map(([id, values]) => [id, asList(values).map(String)])),
    parts: new Map(present(raw.parts).map(([id, part]) => [id, partOf(id, part)])),
    levels: asList(raw.levels).map(({ id, name, needs = {} }) => ({
      id,
      name,
      needs: { standing: asList(needs.standing), parts: asList(needs.parts), groups: asList(needs.groups) },
    })),
    description: raw.description,
    note: raw.note,
    sources: asList(raw.sources),
    formerly: formerlyOf(file.document),
    revisions: revisionsFrom((file.document.data as RawVariant).revisions),
    document: file.document,
    leftOut,
  };
}

function partOf(id: string, raw: RawPart): Part {
  const words = id.replaceAll("-", " ");
  return {
    id,
    name: raw.name ?? words.charAt(0).toUpperCase() + words.slice(1),
    group: raw.group,
    standing: raw.standing ?? "issued",
    quantity: raw.quantity ?? 1,
    weight: raw.weight ?? 1,
    serials: asList(raw.serials).map(serialRange),
    marks: asList(raw.marks).map(String),
    hazards: asList(raw.hazards),
    accepts: new Map(
      asList(raw.accepts).flatMap(({ model, credit = 0 }) => (model === undefined ? [] : [[model, credit]])),
    ),
    plan: raw.plan,
    look: raw.look,
    note: raw.note,
  };
}
