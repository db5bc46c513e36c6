import { grouping } from "../lists/grouping.ts";
import type { Item } from "../records/item.ts";
import type { Variant } from "../records/variant.ts";
import { isMain } from "../terms/states.ts";
import { unitsOfLine } from "../terms/units-of-line.ts";
import type { Completeness, PartFinding } from "./completeness.ts";

/** A part that an item lacks, and what a right one would add. */
export interface Want {
  readonly part: string;
  readonly units: number;
  /** What all of these units would add to the certain, weighted completeness. */
  readonly gain: number;
}

/** Units that an item has beyond what its own case needs. */
export interface Spare {
  readonly part: string;
  readonly units: number;
}

export interface Move {
  readonly part: string;
  readonly from: string;
  readonly to: string;
  readonly units: number;
}

export interface Reallocation {
  readonly variant: string;
  readonly moves: readonly Move[];
  readonly gain: number;
  /** The certain, weighted completeness of each item that gains, before and after. */
  readonly items: readonly { readonly item: string; readonly before: number; readonly after: number }[];
}

interface Examined {
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
 * The certain units of a part with no right one more, with one, two and so on, as many as it lacks: first for those that
 * are gone, then in the place of substitutes that do not count in full, the worst of them first. So no step is larger than
 * the one before it.
 */
function certainUnits({ present, absent, credits, expected }: PartFinding): readonly number[] {
  const creditOfBest = [0];
  for (const credit of credits) creditOfBest.push((creditOfBest.at(-1) ?? 0) + credit);
  const lacking = absent + credits.filter((credit) => credit < 1).length;
  return Array.from({ length: 1 + Math.min(lacking, Math.max(0, expected - present)) }, (_, more) => {
    const kept = credits.length - Math.max(0, more - absent);
    return Math.min(expected, present + more + (creditOfBest[kept] ?? 0));
  });
}

/**
 * The certain, weighted completeness with so many more right units of each part. Added up as it is without them: one that
 * lacks nothing any more is whole exactly, where gains added to what was there would leave a rounding error.
 */
function certainWith(
  { parts }: Variant,
  { completeness }: Examined,
  received: ReadonlyMap<string, number>,
): number {
  let total = 0;
  let certain = 0;
  for (const part of parts.values()) {
    const finding = completeness.parts.get(part.id);
    if (!isMain(part.standing) || !finding?.share) continue;
    total += part.weight;
    certain += (part.weight * (certainUnits(finding)[received.get(part.id) ?? 0] ?? 0)) / finding.expected;
  }
  return certain / total;
}

/** A part that an item lacks units of. */
interface Lack {
  readonly part: string;
  /** Its certain units with no right one more, with one, two and so on. */
  readonly certain: readonly number[];
  /** What a unit is of the certain, weighted completeness. */
  readonly worth: number;
}

function lacksOf(variant: Variant, examined: Examined): readonly Lack[] {
  const total = totalWeight(variant, examined);
  return [...variant.parts.values()].flatMap((part) => {
    const finding = examined.completeness.parts.get(part.id);
    if (!isMain(part.standing) || !finding?.share) return [];
    const all = certainUnits(finding);
    // What is made up for by more substitutes than there are places is not wanted.
    const certain = all.filter((units, at) => at === 0 || units > (all[at - 1] ?? 0));
    return certain.length === 1
      ? []
      : [{ part: part.id, certain, worth: part.weight / finding.expected / total }];
  });
}

const gainOf = ({ certain, worth }: Lack, from: number, to: number): number =>
  worth * ((certain[to] ?? 0) - (certain[from] ?? 0));

/** What would make it whole, in the order of what each part would add to what is certainly there. */
export const wantsOf = (variant: Variant, examined: Examined): readonly Want[] =>
  lacksOf(variant, examined)
    .map((lack) => {
      const units = lack.certain.length - 1;
      return { part: lack.part, units, gain: gainOf(lack, 0, units) };
    })
    .sort((a, b) => b.gain - a.gain);

/** Present units that the case itself does not need; never one that is said to belong to its set. */
export function sparesOf({ parts }: Variant, { item, completeness }: Examined): readonly Spare[] {
  return [...parts.values()].flatMap((part) => {
    const { present = 0, expected = 0 } = completeness.parts.get(part.id) ?? {};
    const lines = item.parts.get(part.id) ?? [];
    const bound = lines
      .filter(({ state, belongs }) => state === "present" && belongs === "set")
      .reduce((sum, line) => sum + unitsOfLine(line, lines, part), 0);
    const units = Math.min(present - expected, present - bound);
    return units > 0 ? [{ part: part.id, units }] : [];
  });
}

/**
 * Which spare unit should go where, for the largest gain in certain completeness over all examples of a variant. A unit of
 * one part is of no use to another, whoever has one to spare lacks none, and what a case gains from each further unit never
 * grows: so the spare units of each part go one by one to where the next gains most, and no other way gains more.
 */
export function reallocate(variant: Variant, examples: readonly Examined[]): Reallocation | null {
  const spares = grouping(
    examples.flatMap((examined) =>
      sparesOf(variant, examined).map((spare) => ({ ...spare, from: examined.item.id })),
    ),
    ({ part }) => part,
  );
  const lacks = grouping(
    examples.flatMap((examined) =>
      lacksOf(variant, examined).flatMap((lack) =>
        lack.certain
          .slice(1)
          .map((_, at) => ({ part: lack.part, gain: gainOf(lack, at, at + 1), to: examined.item.id }))
          .filter(({ gain }) => gain > 0),
      ),
    ),
    ({ part }) => part,
  );
  const chosen = new Map<string, Move>();
  for (const [part, lacking] of lacks) {
    const given = (spares.get(part) ?? []).flatMap(({ from, units }) => Array<string>(units).fill(from));
    const inOrder = lacking.sort((a, b) => b.gain - a.gain);
    for (const [at, { to }] of inOrder.slice(0, given.length).entries()) {
      const from = given[at] ?? "";
      const key = `${part} ${from} ${to}`;
      chosen.set(key, { part, from, to, units: 1 + (chosen.get(key)?.units ?? 0) });
    }
  }
  if (chosen.size === 0) return null;
  // No id has a character that sorts before the space.
  const place = ({ to, part, from }: Move) => `${to} ${part} ${from}`;
  const inOrder = [...chosen.values()].sort((a, b) => (place(a) < place(b) ? -1 : 1));
  const gaining = examples.filter(({ item }) => inOrder.some(({ to }) => to === item.id));
  const items = gaining.map((examined) => {
    const before = examined.completeness.main?.weighted.low ?? 0;
    const received = new Map<string, number>();
    for (const { to, part, units } of inOrder) {
      if (to === examined.item.id) received.set(part, (received.get(part) ?? 0) + units);
    }
    return { item: examined.item.id, before, after: certainWith(variant, examined, received) };
  });
  return {
    variant: variant.id,
    moves: inOrder,
    gain: items.reduce((sum, { before, after }) => sum + after - before, 0),
    items,
  };
}
