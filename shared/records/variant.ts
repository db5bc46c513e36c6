import type { EdtfDate } from "../dates/edtf-interval.ts";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { suggestion } from "../diagnostics/nearest-name.ts";
import { grouping } from "../lists/grouping.ts";
import { isLeftOut, type Path, type SourceDocument } from "../source/document.ts";
import { LeftOut } from "../source/left-out.ts";
import type { Standing } from "../terms/states.ts";
import { mayHaveMore, namesLeftOut } from "./names-left-out.ts";
import { type RawRevisions, type Revision, revisionsFrom } from "./revision.ts";
import { limitsOf, type RawSerialRange, type SerialRange, serialRange } from "./serial.ts";
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
  /** What is not known of it, since it does not fit here or where it is taken from. */
  readonly leftOut?: LeftOut | undefined;
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
  accepts?: { model?: string; credit?: number }[];
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
function takenAway(document: SourceDocument, own: RawVariant, base: Resolved): Diagnostic[] {
  const among = (field: "parts" | "features", code: "unknown-part" | "unknown-feature") =>
    Object.entries(own[field] ?? {}).flatMap(([id, value]) => {
      const inherited = base.raw[field] ?? {};
      if (value !== null || Object.hasOwn(inherited, id) || mayHaveMore(base, field)) return [];
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

/** A variant with all that it takes from another. */
interface Resolved {
  readonly raw: RawVariant;
  readonly leftOut: LeftOut | undefined;
}

/** As it is written. A part or feature of which what is said does not fit is there, with nothing said of it. */
function asWritten(document: SourceDocument): Resolved {
  const { leftOut } = document;
  const raw = document.data as RawVariant;
  if (!leftOut) return { raw, leftOut };
  const named = <Value>(field: "parts" | "features", value: Value) =>
    Object.fromEntries(namesLeftOut(document, field).map((name) => [name, value]));
  return {
    raw: {
      ...raw,
      parts: { ...raw.parts, ...named("parts", {}) },
      features: { ...raw.features, ...named("features", []) },
    },
    leftOut,
  };
}

/** Fields that are taken from another variant where they are not a variant's own. */
const inheritable = ["issued", "made", "serials", "levels", "description", "note", "sources"] as const;

/** What is not known of a variant that takes all from one of which nothing is. */
const withoutBase = ({ raw, leftOut }: Resolved): Resolved => ({
  raw,
  leftOut: new LeftOut([
    ...(leftOut?.paths ?? []),
    ...inheritable.filter((field) => raw[field] === undefined).map((field) => [field]),
    ["parts"],
    ["features"],
  ]),
});

/** Whether a variant says anew what is left out of the one that it extends. */
function saysAnew(own: RawVariant, [field = "", id = "", name = ""]: Path): boolean {
  const has = (values: unknown, key: string | number) => Object.hasOwn(Object(values), key);
  if (field === "features") return has(own.features, id);
  if (field !== "parts") return has(own, field);
  const part = own.parts?.[String(id)];
  return part === null || has(part, name);
}

function extending(own: Resolved, base: Resolved): Resolved {
  const raw = overriding(base.raw, own.raw);
  const inherited = (base.leftOut?.paths ?? []).filter((path) => !saysAnew(own.raw, path));
  const paths = [...(own.leftOut?.paths ?? []), ...inherited];
  return { raw, leftOut: paths.length > 0 ? new LeftOut(paths) : undefined };
}

/**
 * Resolves `extends` across a whole set of references; what cannot be resolved is reported. Where the base is not known,
 * since it is not there, cannot be read or leads round in a circle, nothing is known of what would be taken from it.
 */
export function variantsFrom(
  files: readonly VariantFile[],
  isThere: (id: string) => boolean,
): {
  variants: Variant[];
  diagnostics: Diagnostic[];
} {
  const diagnostics: Diagnostic[] = [];
  const byId = grouping(files, ({ id }) => id);
  const resolved = new Map<VariantFile, Resolved>();

  const resolve = (file: VariantFile, trail: readonly string[]): Resolved => {
    const known = resolved.get(file);
    if (known) return known;
    const own = asWritten(file.document);
    const whole = resolveOwn(file, own, [...trail, file.id]);
    resolved.set(file, whole);
    return whole;
  };

  const resolveOwn = ({ document }: VariantFile, own: Resolved, trail: readonly string[]): Resolved => {
    const { extends: id } = own.raw;
    if (id === undefined) {
      if (isLeftOut(document, "extends")) return withoutBase(own);
      diagnostics.push(...leftEmpty(document, own.raw));
      return own;
    }
    if (trail.includes(id)) {
      diagnostics.push(
        diagnose("circular-extends", document.locate(["extends"]), {
          found: `a circle: ${[...trail.slice(trail.indexOf(id)), id].join(" extends ")}`,
          expected: "a chain that ends with a variant that extends no other",
        }),
      );
      return withoutBase(own);
    }
    const [base, other] = byId.get(id) ?? [];
    // Of two with one id nobody knows which is meant.
    if (!base || other) {
      if (!isThere(id))
        diagnostics.push(
          diagnose("unknown-variant", document.locate(["extends"]), {
            found: `"${id}"`,
            expected: "the id of another variant reference",
            remedy: suggestion(
              id,
              files.map((each) => ({ id: each.id, formerly: formerlyOf(each.document) })),
            ),
          }),
        );
      return withoutBase(own);
    }
    const inherited = resolve(base, trail);
    diagnostics.push(...takenAway(document, own.raw, inherited));
    return extending(own, inherited);
  };

  const variants = files.map((file) => variantOf(file, resolve(file, [])));
  return { variants: limitedByFamily(variants), diagnostics };
}

/** One run of numbers is shared by the variants of a family: where the next of them begins, an open range has ended. */
function limitedByFamily(variants: readonly Variant[]): Variant[] {
  const siblingsOf = grouping(variants, ({ family }) => family);
  return variants.map((variant) => {
    const others = (siblingsOf.get(variant.family) ?? []).filter((each) => each !== variant);
    const beside = others.flatMap(({ serials }) => serials);
    const limited = (range: SerialRange): SerialRange => {
      const limits = limitsOf(range, beside);
      return Object.keys(limits).length === 0 ? range : { ...range, limits };
    };
    return { ...variant, serials: variant.serials.map(limited) };
  });
}

const formerlyOf = ({ data }: SourceDocument): readonly string[] => asList((data as RawVariant).formerly);

function variantOf(file: VariantFile, { raw, leftOut }: Resolved): Variant {
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
