import type { PublishedCollection, PublishedItem } from "../../publication/published.ts";
import { csvLine } from "./csv-line.ts";
import { guarded } from "./formula-guard.ts";
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
  substitutes: (item) => item.completeness.substitutes.join(";"),
  unverified: (item) => item.completeness.unverified.join(";"),
  unexamined: (item) => item.completeness.unexamined.join(";"),
  assembled: (item) => item.assembled.join(";"),
};

const cellText = (cell: Cell): string => (typeof cell === "string" ? guarded(cell) : String(cell ?? ""));

/** `/data/items.csv`, as RFC 4180 has it; a text that a spreadsheet would run as a formula is guarded. */
export function itemsCsv(collection: PublishedCollection): OutputFile {
  const rows = collection.items.map((item) => Object.values(columns).map((read) => read(item)));
  const text = [Object.keys(columns), ...rows].map((row) => `${csvLine(row.map(cellText))}\r\n`).join("");
  return { address: "/data/items.csv", text };
}
