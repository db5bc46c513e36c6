import type { Extra } from "../records/item.ts";
import type { Hazard } from "../records/register.ts";
import type { Part } from "../records/variant.ts";
import type { Completeness } from "./completeness.ts";

export interface HazardFinding {
  readonly hazard: Hazard;
  readonly parts: readonly string[];
  /** Names of things in the case that the reference does not list. */
  readonly extras: readonly string[];
}

/** What is dangerous among the parts that are there or may be, in the order of the register. */
export function assessHazards(
  parts: Iterable<Part>,
  mayBeThere: (part: Part) => boolean,
  extras: readonly Extra[],
  register: ReadonlyMap<string, Hazard>,
): readonly HazardFinding[] {
  const dangerous = [...parts].filter((part) => part.hazards.length > 0 && mayBeThere(part));
  return [...register.values()].flatMap((hazard) => {
    const found = dangerous.filter((part) => part.hazards.includes(hazard.id)).map(({ id }) => id);
    const among = extras.filter((extra) => extra.hazards.includes(hazard.id)).map(({ name }) => name);
    return found.length + among.length > 0 ? [{ hazard, parts: found, extras: among }] : [];
  });
}

/** A part may be there unless every unit is known to be absent, or this example never had it and nobody found one all the same. */
export const mayBeIn = (completeness: Completeness) => (part: Part) => {
  const finding = completeness.parts.get(part.id);
  return finding !== undefined && (finding.absent < finding.expected || finding.surplus > 0);
};
