import { type Constraint, lessEq, solve } from "yalps";
import type { Item } from "../records/item.ts";
import { isMain, type Part, type Variant } from "../records/variant.ts";
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

/** What the certain share of a part would be with some more right units in it: first for those gone, then for substitutes. */
function shareWith({ present, credit, absent, substitute, expected }: PartFinding, more: number): number {
  const replaced = Math.min(substitute, Math.max(0, more - absent));
  const given = replaced === 0 ? 0 : (credit * replaced) / substitute;
  return Math.min(1, (present + credit + more - given) / expected);
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
    certain += part.weight * shareWith(finding, received.get(part.id) ?? 0);
  }
  return certain / total;
}

/** Units known to be gone, or filled by something that does not count in full. */
function unitsWanted({ absent, substitute, credit, expected, present }: PartFinding): number {
  const lacking = absent + (credit < substitute ? substitute : 0);
  return Math.min(lacking, Math.max(0, expected - present));
}

/** What so many more right units of a part would add to the certain, weighted completeness. */
function gainsOf(variant: Variant, examined: Examined): (part: Part, units: number) => number {
  const total = totalWeight(variant, examined);
  return (part, units) => {
    const finding = examined.completeness.parts.get(part.id);
    return finding ? (part.weight * (shareWith(finding, units) - shareWith(finding, 0))) / total : 0;
  };
}

/** What would make it whole, in the order of what each part would add to what is certainly there. */
export function wantsOf(variant: Variant, examined: Examined): readonly Want[] {
  const gainOf = gainsOf(variant, examined);
  return [...variant.parts.values()]
    .filter(({ standing }) => isMain(standing))
    .flatMap((part) => {
      const finding = examined.completeness.parts.get(part.id);
      const units = finding ? unitsWanted(finding) : 0;
      return units === 0 ? [] : [{ part: part.id, units, gain: gainOf(part, units) }];
    })
    .sort((a, b) => b.gain - a.gain);
}

/** Present units that the case itself does not need; never one that is said to belong to its set. */
export function sparesOf({ item, completeness }: Examined): readonly Spare[] {
  return [...completeness.parts.values()].flatMap(({ part, present, expected }) => {
    // A single line that gives no quantity speaks for no more than the case needs.
    const bound = (item.parts.get(part) ?? [])
      .filter(({ state, belongs }) => state === "present" && belongs === "set")
      .reduce((sum, { quantity = 1 }) => sum + quantity, 0);
    const units = Math.min(present - expected, present - bound);
    return units > 0 ? [{ part, units }] : [];
  });
}

/**
 * Which spare unit should go where, for the largest gain in certain completeness over all examples of a variant.
 * An integer program: x units of a part go from one item to another; an item's gain from each further unit of
 * a part never grows, so its units are offered one by one at their own gain.
 */
export function reallocate(variant: Variant, examples: readonly Examined[]): Reallocation | null {
  const variables = new Map<string, Map<string, number>>();
  const constraints = new Map<string, Constraint>();
  const moves = new Map<string, Omit<Move, "units">>();
  const donors = examples
    .map(({ item, completeness }) => ({ item, spares: sparesOf({ item, completeness }) }))
    .filter(({ spares }) => spares.length > 0);
  if (donors.length === 0) return null;
  for (const recipient of examples) {
    const gainOf = gainsOf(variant, recipient);
    for (const want of wantsOf(variant, recipient)) {
      const part = variant.parts.get(want.part);
      if (!part) continue;
      for (let unit = 1; unit <= want.units; unit++) {
        const gain = gainOf(part, unit) - gainOf(part, unit - 1);
        if (gain <= 0) continue;
        const slot = `${want.part} ${unit} in ${recipient.item.id}`;
        for (const donor of donors) {
          const spare = donor.spares.find((each) => each.part === want.part);
          // A case that has one to spare wants none: nothing goes from a case to itself.
          if (!spare) continue;
          const supply = `${want.part} of ${donor.item.id}`;
          const name = `${slot} from ${donor.item.id}`;
          constraints.set(slot, lessEq(1));
          constraints.set(supply, lessEq(spare.units));
          variables.set(
            name,
            new Map([
              ["gain", gain],
              [slot, 1],
              [supply, 1],
            ]),
          );
          moves.set(name, { part: want.part, from: donor.item.id, to: recipient.item.id });
        }
      }
    }
  }
  if (variables.size === 0) return null;
  const solution = solve(
    { direction: "maximize", objective: "gain", constraints, variables, integers: true },
    { timeout: Number.POSITIVE_INFINITY, maxIterations: Number.POSITIVE_INFINITY },
  );
  const chosen = new Map<string, Move>();
  for (const [name, amount] of solution.variables) {
    const move = moves.get(name);
    if (!move) continue;
    const key = `${move.part} ${move.from} ${move.to}`;
    chosen.set(key, { ...move, units: (chosen.get(key)?.units ?? 0) + Math.round(amount) });
  }
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
