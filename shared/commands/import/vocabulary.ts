import { plainWords } from "../../diagnostics/plain-words.ts";
import type { Collection } from "../../records/collection.ts";

/** What a collection calls things, found by their ids or their names, however they are written. */
export interface Vocabulary {
  readonly variant: (written: string) => string | undefined;
  readonly source: (written: string) => string | undefined;
  /** A part of a variant; of any where the variant is not known. */
  readonly part: (variant: string | undefined, written: string) => string | undefined;
  readonly feature: (written: string) => string | undefined;
  readonly featureValue: (variant: string | undefined, feature: string, written: string) => string;
  readonly quantityOf: (variant: string | undefined, part: string) => number | undefined;
}

/** A name that two records share leads to neither. */
function index(
  entries: Iterable<readonly [id: string, name: string]>,
): (written: string) => string | undefined {
  const byName = new Map<string, string | null>();
  const ids = new Set<string>();
  for (const [id, name] of entries) {
    ids.add(id);
    for (const words of new Set([plainWords(id), plainWords(name)])) {
      const other = byName.get(words);
      byName.set(words, other === undefined || other === id ? id : null);
    }
  }
  return (written) => {
    if (ids.has(written)) return written;
    const words = plainWords(written);
    return byName.get(words) ?? byName.get(words.replace(/s$/, "")) ?? undefined;
  };
}

export function vocabularyOf(collection: Collection): Vocabulary {
  const variants = [...collection.variants.values()];
  const partsOf = new Map(
    variants.map((variant) => [
      variant.id,
      index([...variant.parts.values()].map(({ id, name }) => [id, name])),
    ]),
  );
  const anyPart = index(
    variants.flatMap(({ parts }) => [...parts.values()].map(({ id, name }) => [id, name] as const)),
  );
  const features = [...collection.families.values()].flatMap((family) => [...family.features.values()]);
  return {
    variant: index(variants.map(({ id, name }) => [id, name])),
    source: index([...collection.sources.values()].map(({ id, title }) => [id, title])),
    part: (variant, written) =>
      (variant === undefined ? anyPart : (partsOf.get(variant) ?? anyPart))(written),
    feature: index(features.map(({ id, name }) => [id, name])),
    featureValue(variant, feature, written) {
      const family = variant === undefined ? undefined : collection.variants.get(variant)?.family;
      const known =
        family === undefined
          ? features.find(({ id }) => id === feature)
          : collection.families.get(family)?.features.get(feature);
      return known?.values.find((value) => plainWords(value) === plainWords(written)) ?? written;
    },
    quantityOf: (variant, part) =>
      variant === undefined ? undefined : collection.variants.get(variant)?.parts.get(part)?.quantity,
  };
}
