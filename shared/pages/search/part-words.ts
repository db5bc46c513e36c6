import { fold } from "../../diagnostics/fold.ts";
import type { OpenCatalogue, OpenDetails } from "./open-catalogue.ts";

interface PartsFound {
  /** Of the parts that have the word in their names, each once. */
  readonly names: readonly string[];
  /** 1 for every entry whose variant was issued with one, else 0. */
  readonly scores: Uint8Array;
}

/** Two letters are in the names of too many. */
const shortest = 3;

/**
 * A word that no entry says may be in the names of parts: then the outfits are meant that were issued with one. Null where
 * no part is called so.
 */
export function partsNamed(
  catalogue: OpenCatalogue,
  { details }: OpenDetails,
  word: string,
): PartsFound | null {
  if (word.length < shortest) return null;
  const names = new Set<string>();
  const hasOne = details.parts.map((parts) => {
    const named = parts.filter(({ name }) => fold(name).includes(word));
    for (const { name } of named) names.add(name);
    return named.length > 0;
  });
  if (names.size === 0) return null;
  const { variant } = catalogue.columns;
  const scores = Uint8Array.from(variant, (at) => Number(hasOne[at] ?? false));
  return { names: [...names], scores };
}
