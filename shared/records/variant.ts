import type { EdtfDate } from "../dates/edtf-interval.ts";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { suggestion } from "../diagnostics/nearest-name.ts";
import type { SourceDocument } from "../source/document.ts";
import type { Standing } from "../terms/states.ts";
import { type RawRevisions, type Revision, revisionsFrom } from "./revision.ts";
import { type RawSerialRange, type SerialRange, serialRange } from "./serial.ts";
import { asDate, asList, asText, type Typed } from "./text.ts";

export interface Part {
  readonly id: string;
  readonly name: string;
  readonly group: string | undefined;
  readonly standing: Standing;
  readonly quantity: number;
  readonly weight: number;
  readonly serials: readonly SerialRange[];
  readonly marks: readonly string[];
  readonly hazards: readonly string[];
  /** Substitute models that count for something, with what one counts for. */
  readonly accepts: ReadonlyMap<string, number>;
  readonly plan: readonly [number, number, number, number] | undefined;
  readonly look: string | undefined;
  readonly note: string | undefined;
}

/** What the best substitute for a unit counts for; nothing where the reference accepts none. */
export const bestCredit = ({ accepts }: Part): number => Math.max(0, ...accepts.values());

export interface Level {
  readonly id: string;
  readonly name: string;
  readonly needs: {
    readonly standing: readonly Standing[];
    readonly parts: readonly string[];
    readonly groups: readonly string[];
  };
}

export interface Made {
  readonly low: number;
  readonly high: number;
  readonly source: string | undefined;
  readonly page: string | undefined;
  readonly note: string | undefined;
}

export interface Variant {
  readonly id: string;
  readonly family: string;
  readonly name: string;
  readonly extends: string | undefined;
  readonly issued: EdtfDate | undefined;
  readonly made: Made | undefined;
  readonly serials: readonly SerialRange[];
  readonly features: ReadonlyMap<string, readonly string[]>;
  readonly parts: ReadonlyMap<string, Part>;
  /** Best first. */
  readonly levels: readonly Level[];
  readonly description: string | undefined;
  readonly note: string | undefined;
  readonly sources: readonly string[];
  /** Its own, and not those of one that it extends. */
  readonly formerly: readonly string[];
  /** The newest first; none of the variant that this one extends. */
  readonly revisions: readonly Revision[];
  readonly document: SourceDocument;
}

interface RawPart {
  name?: string;
  group?: string;
  standing?: Standing;
  quantity?: number;
  weight?: number;
  serials?: RawSerialRange[];
  marks?: Typed | Typed[];
  hazards?: string[];
  accepts?: { model: string; credit: number }[];
  plan?: [number, number, number, number];
  look?: string;
  note?: string;
}

interface RawVariant {
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
    needs: { standing?: Standing[]; parts?: string[]; groups?: string[] };
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

/** Takes all of the base, then overrides: field by field within a part; null takes a part or feature away. */
function overriding(base: RawVariant, own: RawVariant): RawVariant {
  const merged: RawVariant = { ...base, ...own };
  merged.features = { ...base.features, ...own.features };
  const parts: Record<string, RawPart | null> = { ...base.parts };
  for (const [id, part] of Object.entries(own.parts ?? {})) {
    const inherited = Object.hasOwn(parts, id) ? parts[id] : undefined;
    parts[id] = part === null ? null : { ...inherited, ...part };
  }
  merged.parts = parts;
  return merged;
}

/** Null takes away what is inherited; where nothing is, a name with nothing behind it was only begun. */
function leftEmpty(document: SourceDocument, own: RawVariant): Diagnostic[] {
  return (["parts", "features"] as const).flatMap((field) =>
    Object.entries(own[field] ?? {}).flatMap(([id, value]) =>
      value !== null
        ? []
        : [
            diagnose("wrong-value", document.locate([field, id], "key"), {
              found: `nothing after "${id}"`,
              expected: field === "parts" ? "its fields" : "its value",
              remedy: field === "parts" ? `If there is nothing to say, write "${id}: {}".` : undefined,
            }),
          ],
    ),
  );
}

/** What is taken away is there to be taken away: a name that is not may be another, misspelt, which stays. */
function takenAway(document: SourceDocument, own: RawVariant, base: RawVariant): Diagnostic[] {
  const among = (field: "parts" | "features", code: "unknown-part" | "unknown-feature") =>
    Object.entries(own[field] ?? {}).flatMap(([id, value]) => {
      const inherited = base[field] ?? {};
      if (value !== null || Object.hasOwn(inherited, id)) return [];
      return [
        diagnose(code, document.locate([field, id], "key"), {
          found: `"${id}"`,
          expected: `one of the ${field} of "${own.extends}", to be removed`,
          remedy: suggestion(id, Object.keys(inherited), (known) => Object.hasOwn(own[field] ?? {}, known)),
        }),
      ];
    });
  return [...among("parts", "unknown-part"), ...among("features", "unknown-feature")];
}

/**
 * Resolves `extends` across a whole set of references; what cannot be resolved is reported and left out. One whose base is
 * there, but has errors itself, is left out without a word: without its base it would be another.
 */
export function variantsFrom(
  files: readonly VariantFile[],
  isThere: (id: string) => boolean,
): {
  variants: Variant[];
  diagnostics: Diagnostic[];
} {
  const diagnostics: Diagnostic[] = [];
  const byId = new Map(files.map((file) => [file.id, file]));
  const resolved = new Map<string, RawVariant | null>();

  const resolve = (file: VariantFile, trail: readonly string[]): RawVariant | null => {
    const known = resolved.get(file.id);
    if (known !== undefined) return known;
    const own = file.document.data as RawVariant;
    let whole: RawVariant | null = own;
    if (own.extends === undefined) diagnostics.push(...leftEmpty(file.document, own));
    else {
      const base = byId.get(own.extends);
      if (own.extends === file.id || trail.includes(own.extends)) {
        diagnostics.push(
          diagnose("circular-extends", file.document.locate(["extends"]), {
            found: `a circle: ${[...trail, file.id, own.extends].join(" extends ")}`,
            expected: "a chain that ends with a variant that extends no other",
          }),
        );
        whole = null;
      } else if (base) {
        const inherited = resolve(base, [...trail, file.id]);
        whole = inherited && overriding(inherited, own);
        if (inherited) diagnostics.push(...takenAway(file.document, own, inherited));
      } else {
        if (!isThere(own.extends))
          diagnostics.push(
            diagnose("unknown-variant", file.document.locate(["extends"]), {
              found: `"${own.extends}"`,
              expected: "the id of another variant reference",
              remedy: suggestion(
                own.extends,
                files.map(({ id, document }) => ({ id, formerly: formerlyOf(document) })),
              ),
            }),
          );
        whole = null;
      }
    }
    resolved.set(file.id, whole);
    return whole;
  };

  const variants: Variant[] = [];
  for (const file of files) {
    const raw = resolve(file, []);
    if (raw) variants.push(variantOf(file, raw));
  }
  return { variants, diagnostics };
}

const formerlyOf = ({ data }: SourceDocument): readonly string[] => asList((data as RawVariant).formerly);

function variantOf(file: VariantFile, raw: RawVariant): Variant {
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
    levels: asList(raw.levels).map(({ id, name, needs }) => ({
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
    accepts: new Map(asList(raw.accepts).map(({ model, credit }) => [model, credit])),
    plan: raw.plan,
    look: raw.look,
    note: raw.note,
  };
}
