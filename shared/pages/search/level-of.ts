import type { ListedFamily, ListedItem } from "../listed/listed-family.ts";
import { namedApart } from "./named-apart.ts";
import type { Named } from "./search-index.ts";

/** The level that an outfit certainly reaches, as lists, the form and the search know it. */
export function levelOf(listed: readonly Pick<ListedFamily, "items">[]): (item: ListedItem) => Named | null {
  const apart = namedApart(
    listed.flatMap(({ items }) =>
      items.flatMap(({ level, variant }) => (level ? { named: level, variant: variant.id } : [])),
    ),
  );
  return ({ level }) => level && apart(level);
}
