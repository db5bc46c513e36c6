import type { Variant } from "../records/variant.ts";
import type { LikenessTable } from "./item-pair.ts";
import { attributesOf, type Likeness, type LikenessRow, likenessesIn, likenessRow } from "./likeness.ts";
import { type CensusItem, type Example, examplesOf } from "./rarity/examples.ts";

/** By what the items of a variant are likened, to each other and to its recorded examples. */
export interface VariantLikeness {
  readonly table: LikenessTable;
  /** Every other example that it can be compared to. */
  readonly likenessesOf: (item: string) => readonly Likeness[];
}

export function variantLikeness(
  variant: Variant,
  features: Iterable<string>,
  examples: readonly Example[],
  items: readonly CensusItem[],
): VariantLikeness {
  const likened = { features: [...features], parts: [...variant.parts.keys()] };
  const rows = examples.map((example) => likenessRow(example, likened));
  const rowOfExample = new Map(rows.flatMap((row) => row.example.items.map((id) => [id, row] as const)));
  // One left out of the census is compared all the same, and is nobody's neighbour. Of two that are held to be one
  // example each is compared by itself, since what was found of them may differ.
  const rowByItself = new Map<string, LikenessRow>();
  for (const { item, completeness } of items) {
    if (rowOfExample.get(item.id)?.example.items.length === 1) continue;
    for (const alone of examplesOf(variant, [], [{ item: { ...item, census: true }, completeness }]))
      rowByItself.set(item.id, likenessRow(alone, likened));
  }
  const likenessesTo = likenessesIn(rows, attributesOf(likened));
  return {
    table: { ...likened, rowOf: (id) => rowByItself.get(id) ?? rowOfExample.get(id) },
    likenessesOf: (id) => {
      const row = rowOfExample.get(id) ?? rowByItself.get(id);
      return row ? likenessesTo(row) : [];
    },
  };
}
