import type { PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { csvLine } from "./csv-line.ts";
import { guarded } from "./formula-guard.ts";
import { itemsById } from "./items-by-id.ts";
import type { OutputFile } from "./output-file.ts";

type Cell = string | number | null | undefined;

const columns: Readonly<Record<string, (item: PublishedItem) => Cell>> = {
  id: (item) => item.id,
  title: (item) => item.title,
  family: (item) => item.family.id,
  variant: (item) => item.variant.id,
  serial: (item) => item.serial,
  set: (item) => item.set,
  status: (item) => item.status,
  examined: (item) => item.examined,
  verdict: (item) => item.identification.verdict,
  weighted_low: (item) => item.completeness.weighted?.low,
  weighted_high: (item) => item.completeness.weighted?.high,
  counted_low: (item) => item.completeness.counted?.low,
  counted_high: (item) => item.completeness.counted?.high,
  expected: (item) => item.completeness.counted?.expected,
  level_sure: (item) => item.completeness.level.sure,
  level_possible: (item) => item.completeness.level.possible,
  as_complete: (item) => item.rarity.asComplete.value,
  as_complete_low: (item) => item.rarity.asComplete.low,
  as_complete_high: (item) => item.rarity.asComplete.high,
  rank_place: (item) => item.rarity.rank?.place,
  rank_of: (item) => item.rarity.rank?.of,
  missing: (item) => item.completeness.missing.join(";"),
  partial: (item) => item.completeness.partial.join(";"),
  substitutes: (item) => item.completeness.substitutes.join(";"),
  unverified: (item) => item.completeness.unverified.join(";"),
  unexamined: (item) => item.completeness.unexamined.join(";"),
  assembled: (item) => item.assembled.join(";"),
};

const cellText = (cell: Cell): string => (typeof cell === "string" ? guarded(cell) : String(cell ?? ""));

const lineOf = (cells: readonly Cell[]): string => `${csvLine(cells.map(cellText))}\r\n`;

/** The line of an item. */
export const csvRow = (item: PublishedItem): string =>
  lineOf(Object.values(columns).map((read) => read(item)));

/** `/data/items.csv`, as RFC 4180 has it; a text that a spreadsheet would run as a formula is guarded. */
export function itemsCsv({ listed }: CatalogueIndex): OutputFile {
  const rows = itemsById(listed).map(({ row }) => row);
  return { address: addresses.itemsCsv, text: lineOf(Object.keys(columns)) + rows.join("") };
}
