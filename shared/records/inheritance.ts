import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { suggestion } from "../diagnostics/nearest-name.ts";
import { grouping } from "../lists/grouping.ts";
import { isLeftOut, type Path, type SourceDocument } from "../source/document.ts";
import { LeftOut } from "../source/left-out.ts";
import { mayHaveMore, namesLeftOut } from "./names-left-out.ts";
import { limitsOf, type SerialRange } from "./serial.ts";
import type { Variant } from "./variant.ts";
import {
  formerlyOf,
  type RawPart,
  type RawVariant,
  type Resolved,
  type VariantFile,
  variantOf,
} from "./written-variant.ts";

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
