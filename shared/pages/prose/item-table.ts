import type { PublishedItem } from "../../publication/published.ts";
import type { ItemColumn } from "../../publication/references/items-at.ts";
import type { TableAt } from "../../publication/references/table-at.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { shareInterval, unitsInWords } from "../views/completeness-words.ts";
import { plain, stateInWords } from "../views/item-parts.ts";
import { missingParts } from "../views/missing-parts.ts";
import { standingOf } from "../views/standing-words.ts";

/** Outfits side by side, in the columns that a writer asked for. */
export interface ItemTable {
  readonly columns: readonly string[];
  readonly rows: readonly { readonly item: Link; readonly cells: readonly string[] }[];
}

export const itemTable = (
  { items, columns }: Extract<TableAt, { kind: "items" }>,
  index: CollectionIndex,
): ItemTable => ({
  columns: columns.map((column) => (column.kind === "field" ? heading(column.field, index) : column.name)),
  rows: items.map((item) => ({
    item: { address: addresses.item(item.id), name: item.title },
    cells: columns.map((column) => cell(column, item, index) ?? "—"),
  })),
});

function heading(field: Extract<ItemColumn, { kind: "field" }>["field"], { words }: CollectionIndex): string {
  const { item, catalogue, completeness } = words.pages;
  return {
    variant: catalogue.held,
    serial: item.serial,
    set: item.set,
    status: catalogue.status,
    examined: item.examined,
    verdict: catalogue.verdict,
    completeness: completeness.weighted,
    counted: completeness.counted,
    level: catalogue.level,
    missing: item.lists.missing,
    rank: catalogue.rank,
    ...words.figures.item,
  }[field];
}

function cell(column: ItemColumn, item: PublishedItem, { words }: CollectionIndex): string | null {
  const { pages } = words;
  if (column.kind === "part") {
    const part = item.parts.find(({ id }) => id === column.id);
    return part ? stateInWords(part, words) : null;
  }
  if (column.kind !== "field") {
    const value = item.features.find(({ id }) => id === column.id)?.value;
    return value ? plain(value) : null;
  }
  const { completeness, rarity } = item;
  switch (column.field) {
    case "variant":
      return item.variant.name;
    case "serial":
      return item.serial;
    case "set":
      return item.set;
    case "status":
      return standingOf(item, words);
    case "examined":
      return item.examined && words.date(item.examined);
    case "verdict":
      return pages.verdicts[item.identification.verdict].short;
    case "completeness":
      return completeness.weighted && shareInterval(completeness.weighted, words);
    case "counted":
      return completeness.counted && unitsInWords(completeness.counted, words);
    case "level":
      return item.levels.find(({ id }) => id === completeness.level.sure)?.name ?? null;
    case "missing":
      return (
        missingParts(item, words)
          .map(({ name }) => name)
          .join(", ") || null
      );
    case "rank":
      return rarity.rank && pages.catalogue.rankOf(rarity.rank.place, rarity.rank.of);
    default:
      return words.phrase(rarity[column.field]);
  }
}
