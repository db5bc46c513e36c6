import type { ListedFamily, ListedItem } from "../listed/listed-family.ts";

/** Every item, by id: what a table for programs is ordered by. */
export const itemsById = (listed: readonly ListedFamily[]): ListedItem[] =>
  listed.flatMap(({ items }) => items).sort((a, b) => (a.id < b.id ? -1 : 1));
