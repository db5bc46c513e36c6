import { grouping } from "../lists/grouping.ts";
import type { Collection } from "../records/collection.ts";
import type { Item } from "../records/item.ts";
import type { Variant } from "../records/variant.ts";
import { gower } from "../statistics/gower.ts";
import type { Completeness } from "./completeness.ts";
import type { Dating } from "./dating.ts";
import { attributesOf, type LikenessRow } from "./likeness.ts";
import type { MarkFinding } from "./matching-numbers.ts";
import { type ComparedUnits, type Contrast, contrastUnits, contrastValues } from "./unit-contrast.ts";

/** Two items of one variant, the first before the second by id. */
export interface ItemPair {
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
}

/** A variant with no more items than this has every pair of them compared. */
export const everyPairUpTo = 12;
/** Once a collection has this many pairs, no further variant is added: a reader's browser compares the rest. */
export const pairsAtMost = 1000;

/**
 * The variants of which every pair of items is compared, the smallest first. It depends on how many items each has
 * and on nothing else, so that one family can be assessed without the others.
 */
export function comparedVariants(items: ReadonlyMap<string, number>): ReadonlySet<string> {
  const bySize = [...items]
    .filter(([, count]) => count > 1 && count <= everyPairUpTo)
    .sort(([a, ofA], [b, ofB]) => ofA - ofB || (a < b ? -1 : 1));
  const chosen = new Set<string>();
  let pairs = 0;
  for (const [variant, count] of bySize) {
    pairs += (count * (count - 1)) / 2;
    if (pairs > pairsAtMost) break;
    chosen.add(variant);
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
  const valuesOf = (item: string) => table.rowOf(item)?.values ?? [];
  const [first, second] = [valuesOf(items[0]), valuesOf(items[1])];
  const isKnown = (at: number) => (first[at] ?? null) !== null && (second[at] ?? null) !== null;
  const compared = {
    features: table.features.filter((_, at) => isKnown(at)),
    parts: table.parts.filter((_, at) => isKnown(table.features.length + at)),
  };
  const likeness =
    first.length > 0 && second.length > 0 ? gower(first, second, attributesOf(table)).likeness : null;
  return { likeness, compared };
}

/** Two items of a variant, feature by feature and part by part. */
export function compareItems(
  items: readonly [Item, Item],
  variant: Variant,
  features: Iterable<string>,
  assessed: (item: string) => AssessedItem | undefined,
  table: LikenessTable,
): ItemPair | null {
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

/** All the pairs of a collection that have a page of their own, each in the order of ids. */
export function compareCollection(
  { items, variants, families }: Pick<Collection, "items" | "variants" | "families">,
  compared: ReadonlySet<string>,
  assessed: (item: string) => AssessedItem | undefined,
  tableOf: (variant: string) => LikenessTable | undefined,
): readonly ItemPair[] {
  const itemsOf = grouping(items.values(), ({ variant }) => variant);
  return [...variants.values()].flatMap((variant) => {
    const table = tableOf(variant.id);
    if (!compared.has(variant.id) || !table) return [];
    const features = [...(families.get(variant.family)?.features.keys() ?? [])];
    const inOrder = [...(itemsOf.get(variant.id) ?? [])].sort((a, b) => (a.id < b.id ? -1 : 1));
    return inOrder.flatMap((first, at) =>
      inOrder
        .slice(at + 1)
        .flatMap((second) => compareItems([first, second], variant, features, assessed, table) ?? []),
    );
  });
}
