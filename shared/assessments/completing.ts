import { addUnder } from "../lists/grouping.ts";
import type { Item } from "../records/item.ts";
import { neededBy } from "../records/needed-parts.ts";
import type { Part, Variant } from "../records/variant.ts";
import { isMain } from "../terms/states.ts";
import { unitsOfLine } from "../terms/units-of-line.ts";
import type { Completeness, PartFinding } from "./completeness.ts";

/** A part that an item lacks, and what a right one would add. */
export interface Want {
  readonly part: string;
  readonly units: number;
  /** What all of these units would add to the certain, weighted completeness; nothing where the part is counted apart. */
  readonly gain: number;
  /** The levels of the reference that need it, the best first. */
  readonly neededFor: readonly string[];
}

/** Units that an item has beyond what its own case needs. */
export interface Spare {
  readonly part: string;
  readonly units: number;
}

export interface Examined {
  readonly item: Item;
  readonly completeness: Completeness;
}

/** The weights of the core and issued parts that this example was issued: what its completeness is divided by. */
const totalWeight = (variant: Variant, { completeness }: Examined): number =>
  [...variant.parts.values()].reduce(
    (sum, part) => sum + (isMain(part.standing) && completeness.parts.get(part.id)?.share ? part.weight : 0),
    0,
  );

/**
 * The certain units of a part with no right one more, with one, with two and so on, up to as many as it lacks. The
 * first take the place of units that are gone, the next that of substitutes that do not count in full, the worst
 * first. So no step is larger than the one before it.
 */
export function certainUnits({ present, absent, credits, expected }: PartFinding): readonly number[] {
  const creditOfBest = [0];
  for (const credit of credits) creditOfBest.push((creditOfBest.at(-1) ?? 0) + credit);
  const lacking = absent + credits.filter((credit) => credit < 1).length;
  return Array.from({ length: 1 + Math.min(lacking, Math.max(0, expected - present)) }, (_, more) => {
    const kept = credits.length - Math.max(0, more - absent);
    return Math.min(expected, present + more + (creditOfBest[kept] ?? 0));
  });
}

const sought = new WeakMap<Variant, ReadonlyMap<Part, readonly string[]>>();

/**
 * The parts that are worth seeking, each with the levels that need it: all core and issued ones and, of those that
 * are counted apart, the ones that a level needs.
 */
function soughtParts(variant: Variant): ReadonlyMap<Part, readonly string[]> {
  const known = sought.get(variant);
  if (known) return known;
  const { parts, levels } = variant;
  const levelsOf = new Map([...parts.values()].map((part): [Part, string[]] => [part, []]));
  for (const level of levels) for (const part of neededBy(level, parts)) addUnder(levelsOf, part, level.id);
  const found = new Map(
    [...levelsOf].filter(([{ standing }, needing]) => isMain(standing) || needing.length > 0),
  );
  sought.set(variant, found);
  return found;
}

/** A part that an item lacks units of. */
export interface Lack {
  readonly part: Part;
  /** Its certain units with no right one more, with one, two and so on. */
  readonly certain: readonly number[];
  /** What a unit is of the certain, weighted completeness; of what is counted apart, of the part itself. */
  readonly worth: number;
}

export function lacksOf(variant: Variant, examined: Examined): readonly Lack[] {
  const total = totalWeight(variant, examined);
  return [...soughtParts(variant).keys()].flatMap((part) => {
    const finding = examined.completeness.parts.get(part.id);
    if (!finding?.share) return [];
    const certain = certainUnits(finding);
    const share = isMain(part.standing) ? part.weight / total : 1;
    return certain.length === 1 ? [] : [{ part, certain, worth: share / finding.expected }];
  });
}

export const worthOf = ({ certain, worth }: Lack, from: number, to: number): number =>
  worth * ((certain[to] ?? 0) - (certain[from] ?? 0));

/**
 * What would make it whole, in the order of what each part would add to what is certainly there; what is counted apart
 * adds nothing to it, and comes last.
 */
export function wantsOf(variant: Variant, examined: Examined): readonly Want[] {
  return lacksOf(variant, examined)
    .map((lack) => {
      const units = lack.certain.length - 1;
      const gain = isMain(lack.part.standing) ? worthOf(lack, 0, units) : 0;
      return { part: lack.part.id, units, gain, neededFor: soughtParts(variant).get(lack.part) ?? [] };
    })
    .sort((a, b) => b.gain - a.gain);
}

/** Present units of parts that are sought, which the case itself does not need; never one that is said to belong to its set. */
export function sparesOf(variant: Variant, { item, completeness }: Examined): readonly Spare[] {
  return [...soughtParts(variant).keys()].flatMap((part) => {
    const { present = 0, expected = 0 } = completeness.parts.get(part.id) ?? {};
    const lines = item.parts.get(part.id) ?? [];
    const bound = lines
      .filter(({ state, belongs }) => state === "present" && belongs === "set")
      .reduce((sum, line) => sum + unitsOfLine(line, lines, part), 0);
    const units = Math.min(present - expected, present - bound);
    return units > 0 ? [{ part: part.id, units }] : [];
  });
}
