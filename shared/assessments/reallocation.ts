import { addUnder, grouping } from "../lists/grouping.ts";
import type { Item } from "../records/item.ts";
import { isMarkOfSet } from "../records/set-marks.ts";
import type { Part, Variant } from "../records/variant.ts";
import { setPlace } from "../terms/set-place.ts";
import { isMain } from "../terms/states.ts";
import { unitsOfLine } from "../terms/units-of-line.ts";
import { certainUnits, type Examined, lacksOf, sparesOf, worthOf } from "./completing.ts";

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

/** Whether marks that were read on a part are those of a set's number. */
const bearNumberOf = (set: string | undefined, marks: readonly string[], part: Part): boolean =>
  set !== undefined &&
  part.marks.some((mark) => mark.includes(setPlace) && marks.some((read) => isMarkOfSet(read, mark, set)));

/** What one item can give of a part, and how many of its units bear marks that are not those of its own set. */
interface Giver {
  readonly item: Item;
  units: number;
  readonly marked: { readonly marks: readonly string[]; units: number }[];
}

function giver(item: Item, part: Part, units: number): Giver {
  const lines = item.parts.get(part.id) ?? [];
  const marked = lines
    .filter(({ state, belongs, marks }) => state === "present" && belongs !== "set" && marks.length > 0)
    .filter(({ marks }) => !bearNumberOf(item.set, marks, part))
    .map((line) => ({ marks: line.marks, units: unitsOfLine(line, lines, part) }));
  return { item, units, marked };
}

/**
 * Which spare unit should go where. One that bears another set's number goes to that set, if the set gains by it. The
 * others go where they add most to certain completeness, over all examples of a variant. A unit of one part is of no
 * use to another, whoever has one to spare lacks none, and what a case gains from each further unit never grows. So
 * the spare units of each part go one by one to where the next gains most, and no other way gains more.
 */
export function reallocate(variant: Variant, examples: readonly Examined[]): Reallocation | null {
  const { parts } = variant;
  const givers = new Map<string, Giver[]>();
  for (const examined of examples) {
    for (const { part: id, units } of sparesOf(variant, examined)) {
      const part = parts.get(id);
      if (part) addUnder(givers, id, giver(examined.item, part, units));
    }
  }
  const lacking = grouping(
    examples.flatMap((examined) =>
      lacksOf(variant, examined).flatMap((lack) =>
        lack.certain
          .slice(1)
          .map((_, at) => ({ part: lack.part, worth: worthOf(lack, at, at + 1), to: examined.item })),
      ),
    ),
    ({ part }) => part,
  );
  const chosen = new Map<string, Move>();
  for (const [part, units] of lacking) {
    const giving = givers.get(part.id) ?? [];
    const send = (from: Giver, to: Item) => {
      from.units--;
      const key = `${part.id} ${from.item.id} ${to.id}`;
      const sent = 1 + (chosen.get(key)?.units ?? 0);
      chosen.set(key, { part: part.id, from: from.item.id, to: to.id, units: sent });
    };
    const others: Item[] = [];
    for (const { to } of units.sort((a, b) => b.worth - a.worth)) {
      const itsOwn = (of: Giver) =>
        of.marked.find((each) => each.units > 0 && bearNumberOf(to.set, each.marks, part));
      const from = giving.find((each) => each.units > 0 && itsOwn(each));
      const marked = from && itsOwn(from);
      if (!marked) {
        others.push(to);
        continue;
      }
      marked.units--;
      send(from, to);
    }
    for (const to of others) {
      const from = giving.find((each) => each.units > 0);
      if (from) send(from, to);
    }
  }
  if (chosen.size === 0) return null;
  // No id has a character that sorts before the space.
  const place = ({ to, part, from }: Move) => `${to} ${part} ${from}`;
  const inOrder = [...chosen.values()].sort((a, b) => (place(a) < place(b) ? -1 : 1));
  const isCounted = ({ part }: Move) => isMain(parts.get(part)?.standing ?? "optional");
  const gaining = examples.filter(({ item }) =>
    inOrder.some((move) => move.to === item.id && isCounted(move)),
  );
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
