import type { Collection } from "../records/collection.ts";
import type { Item } from "../records/item.ts";
import type { Variant } from "../records/variant.ts";
import { gower } from "../statistics/gower.ts";
import type { Completeness } from "./completeness.ts";
import type { Dating } from "./dating.ts";
import { attributesOf, type Likeness, type LikenessRow } from "./likeness.ts";
import type { MarkFinding } from "./matching-numbers.ts";
import { type ComparedUnits, type Contrast, contrastUnits, contrastValues } from "./unit-contrast.ts";

/** Two items of one variant, the first before the second by id. */
export interface ItemComparison {
  readonly variant: string;
  readonly items: readonly [string, string];
  readonly features: ReadonlyMap<string, Contrast>;
  readonly parts: ReadonlyMap<string, Contrast>;
  /** Gower's, over the features and parts known of both; null where there is none. */
  readonly likeness: number | null;
  readonly compared: { readonly features: readonly string[]; readonly parts: readonly string[] };
}

/** What of an item's assessment the comparison reads. */
export interface AssessedItem {
  readonly completeness: Completeness;
  readonly dating: Dating;
  readonly marks: ReadonlyMap<string, MarkFinding>;
  readonly nearest: readonly Likeness[];
}

export const pairKey = (first: string, second: string): string =>
  first < second ? `${first} ${second}` : `${second} ${first}`;

/** A variant with no more items than this has every pair of them compared. */
export const everyPairUpTo = 12;
/** Once a collection has this many pairs, no further variant is added: a reader's browser compares the rest. */
export const pairsAtMost = 1000;

const pairOf = (first: string, second: string): readonly [string, string] =>
  first < second ? [first, second] : [second, first];

/** Every pair of a small variant; of a larger one each item with those most like it. */
function pairsIn(
  items: readonly string[],
  nearest: (item: string) => readonly string[],
): (readonly [string, string])[] {
  if (items.length <= everyPairUpTo) {
    return items.flatMap((first, at) => items.slice(at + 1).map((second) => pairOf(first, second)));
  }
  const pairs = new Map<string, readonly [string, string]>();
  for (const item of items) {
    for (const other of nearest(item))
      if (other !== item) pairs.set(pairKey(item, other), pairOf(item, other));
  }
  return [...pairs.values()];
}

/** Which pairs are compared in a collection, by variant: the variants with the fewest items first. */
export function pairsToCompare(
  itemsOf: ReadonlyMap<string, readonly string[]>,
  nearest: (item: string) => readonly string[],
): ReadonlyMap<string, readonly (readonly [string, string])[]> {
  const bySize = [...itemsOf].sort(([a, ofA], [b, ofB]) => ofA.length - ofB.length || (a < b ? -1 : 1));
  const chosen = new Map<string, readonly (readonly [string, string])[]>();
  let count = 0;
  for (const [variant, items] of bySize) {
    const pairs = pairsIn(items, nearest);
    if (count + pairs.length > pairsAtMost) break;
    count += pairs.length;
    chosen.set(variant, pairs);
  }
  return chosen;
}

export function comparedUnits(
  part: string,
  item: Item,
  { completeness, marks, dating }: AssessedItem,
): ComparedUnits | null {
  const found = completeness.parts.get(part);
  if (!found) return null;
  const { present, substitute, unverified, absent, unexamined, notIssued, share } = found;
  const mark = marks.get(part)?.verdict ?? null;
  return {
    present,
    substitute,
    unverified,
    absent,
    unexamined,
    notIssued,
    share,
    models: (item.parts.get(part) ?? []).flatMap(({ model }) => model ?? []),
    // A mark that nobody noted is no mark that differs.
    marks: mark === "unread" ? null : mark,
    dating: dating.parts.get(part)?.some(({ verdict }) => verdict === "later") ? "later" : null,
  };
}

/** The rows by which items are likened, and the features and parts that their values stand for, in order. */
export interface LikenessTable {
  readonly features: readonly string[];
  readonly parts: readonly string[];
  readonly rowOf: (item: string) => LikenessRow | undefined;
}

function likenessOf(items: readonly [string, string], table: LikenessTable) {
  const [first, second] = items.map((item) => table.rowOf(item)?.values ?? []);
  const isKnown = (at: number) => (first?.[at] ?? null) !== null && (second?.[at] ?? null) !== null;
  const compared = {
    features: table.features.filter((_, at) => isKnown(at)),
    parts: table.parts.filter((_, at) => isKnown(table.features.length + at)),
  };
  const likeness =
    first?.length && second?.length ? gower(first, second, attributesOf(table)).likeness : null;
  return { likeness, compared };
}

/** Two items of a variant, feature by feature and part by part. */
export function compareItems(
  items: readonly [Item, Item],
  variant: Variant,
  features: Iterable<string>,
  assessed: (item: string) => AssessedItem | undefined,
  table: LikenessTable,
): ItemComparison | null {
  const [first, second] = items;
  const [ofFirst, ofSecond] = [assessed(first.id), assessed(second.id)];
  if (!ofFirst || !ofSecond) return null;
  return {
    variant: variant.id,
    items: [first.id, second.id],
    features: new Map(
      [...features].map((id) => [
        id,
        contrastValues([first.features.get(id) ?? null, second.features.get(id) ?? null]),
      ]),
    ),
    parts: new Map(
      [...variant.parts.keys()].map((id) => [
        id,
        contrastUnits([comparedUnits(id, first, ofFirst), comparedUnits(id, second, ofSecond)]),
      ]),
    ),
    ...likenessOf([first.id, second.id], table),
  };
}

/** All the pairs of a collection that have a page of their own. */
export function compareCollection(
  { items, variants, families }: Pick<Collection, "items" | "variants" | "families">,
  assessed: (item: string) => AssessedItem | undefined,
  tableOf: (variant: string) => LikenessTable | undefined,
): readonly ItemComparison[] {
  const itemsOf = new Map<string, string[]>();
  for (const { id, variant } of items.values()) itemsOf.set(variant, [...(itemsOf.get(variant) ?? []), id]);
  const nearest = (item: string) => (assessed(item)?.nearest ?? []).flatMap(({ example }) => example.items);
  return [...pairsToCompare(itemsOf, nearest)].flatMap(([id, pairs]) => {
    const variant = variants.get(id);
    const table = tableOf(id);
    if (!variant || !table) return [];
    const features = [...(families.get(variant.family)?.features.keys() ?? [])];
    return pairs.flatMap(([a, b]) => {
      const [first, second] = [items.get(a), items.get(b)];
      if (!first || !second || first.variant !== second.variant) return [];
      return compareItems([first, second], variant, features, assessed, table) ?? [];
    });
  });
}
