import type { PublishedCollection, PublishedItem } from "../../publication/published.ts";
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
};

/** A spreadsheet takes a cell that begins like this for a formula and runs it; an apostrophe makes it text. */
const startsFormula = /^[=+\-@\t\r]/;

function cellText(cell: Cell): string {
  if (cell === null || cell === undefined) return "";
  const text = typeof cell === "string" && startsFormula.test(cell) ? `'${cell}` : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows as RFC 4180 has them: CRLF, quotation marks doubled. */
export const csvText = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(",")}\r\n`).join("");

/** `/data/items.csv` */
export function itemsCsv(collection: PublishedCollection): OutputFile {
  const rows = collection.items.map((item) => Object.values(columns).map((read) => read(item)));
  return { address: "/data/items.csv", text: csvText([Object.keys(columns), ...rows]) };
}
