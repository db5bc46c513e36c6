import { neededBy } from "../../records/needed-parts.ts";
import type { Sighting } from "../../records/sighting.ts";
import type { Part, Variant } from "../../records/variant.ts";
import { type Example, examplesOf } from "./examples.ts";
import { reachOf } from "./level-rarity.ts";

/**
 * Of each sighting whether its example reaches some level of the reference, by all that the log says of it; null where
 * that does not decide. What an outfit of the catalogue adds to the same example is left out: by it a row of the log would
 * give away a serial that the outfit masks.
 */
export function levelInLog(
  variant: Variant,
  examples: readonly Example[],
): ReadonlyMap<Sighting, boolean | null> {
  const needs = variant.levels.map((level) => neededBy(level, variant.parts));
  const reached = new Map<Sighting, boolean | null>();
  for (const example of examples) {
    const logged = example.items.length === 0 ? [example] : examplesOf(variant, example.rows, []);
    for (const each of logged) {
      const reaches = reachesAny(each, needs);
      for (const row of each.rows) reached.set(row, reaches);
    }
  }
  return reached;
}

function reachesAny(example: Example, needs: readonly (readonly Part[])[]): boolean | null {
  // Most of a log says nothing of parts.
  if (example.shares.size === 0) return null;
  const found = needs.map((needed) => reachOf(example, needed).reaches);
  if (found.includes(true)) return true;
  return found.includes(null) ? null : false;
}
