import { plainWords } from "../../diagnostics/plain-words.ts";

export interface Column {
  /** From 0. */
  readonly index: number;
  readonly heading: string;
  /** It stands to the right of every heading, and has the letter of its column for one. */
  readonly beyond: boolean;
}

/** What a file of rejected rows has behind the columns of its spreadsheet. */
export const rejectedHeadings = ["row", "reason"] as const;

/** "A", "B" … "AA": a column without a heading, as a spreadsheet names it. */
function letterOf(index: number): string {
  const rest = Math.floor(index / 26);
  return `${rest > 0 ? letterOf(rest - 1) : ""}${String.fromCharCode(65 + (index % 26))}`;
}

const filled = (row: readonly string[] | undefined) => (row ?? []).filter((cell) => cell !== "").length;

/**
 * Which rows are the heading, counted from 1. Titles may stand above it, and a row of merged cells that join
 * several headings; so the row with the most headings that are known is looked for among the first ones.
 */
export function findHeadingRows(
  rows: readonly (readonly string[])[],
  isKnown: (heading: string) => boolean,
): number[] {
  let best = -1;
  let most = 0;
  for (const [at, row] of rows.slice(0, 15).entries()) {
    const known = new Set(row.filter((cell) => cell !== "" && isKnown(cell)).map(plainWords)).size;
    if (known > most) {
      most = known;
      best = at;
    }
  }
  // A single one may be a cell that says the same, below headings that nobody knows.
  const first = rows.findIndex((row) => filled(row) > 1);
  if (best < 0 || (most === 1 && first >= 0 && first < best)) best = first;
  if (best < 0) return [];
  const above = rows[best - 1];
  // A row of merged cells has gaps, and every heading in it spans at least one column of the row below.
  const merged = above && filled(above) >= 2 && filled(above) < filled(rows[best]);
  return merged ? [best, best + 1] : [best + 1];
}

/** The columns by their headings: merged ones spread over their span, repeated ones told apart, empty ones by letter. */
export function columnsOf(rows: readonly (readonly string[])[], headingRows: readonly number[]): Column[] {
  const lowest = Math.max(0, ...headingRows);
  const heading = rows[lowest - 1] ?? [];
  const above = headingRows.length > 1 ? (rows[(headingRows[0] ?? 1) - 1] ?? []) : [];
  let width = 0;
  for (const row of rows.slice(Math.max(0, lowest - 1))) width = Math.max(width, row.length);
  let group = "";
  const names: string[] = [];
  const groups: string[] = [];
  for (let index = 0; index < width; index++) {
    group = above[index] || group;
    groups.push(group);
    names.push((headingRows.length > 0 ? heading[index] : "") || above[index] || "");
  }
  const seen = new Map<string, number>();
  const repeated = (name: string) => names.filter((each) => each === name).length > 1;
  const isRejection = names.slice(-2).join() === rejectedHeadings.join();
  const last = names.slice(0, isRejection ? -2 : undefined).findLastIndex((name) => name !== "");
  return names.map((name, index) => {
    const own =
      name === ""
        ? `column ${letterOf(index)}`
        : repeated(name) && groups[index]
          ? `${groups[index]}: ${name}`
          : name;
    const count = (seen.get(own) ?? 0) + 1;
    seen.set(own, count);
    return {
      index,
      heading: count > 1 ? `${own} (${count})` : own,
      beyond: name === "" && last >= 0 && index > last,
    };
  });
}

export interface DataRow {
  /** As the spreadsheet counts. */
  readonly number: number;
  readonly cells: readonly string[];
}

/** The rows below the heading: empty ones and repetitions of the heading, as on printed pages, are counted and left. */
export function dataRows(
  rows: readonly (readonly string[])[],
  headingRows: readonly number[],
): { rows: DataRow[]; empty: number; repeatedHeadings: number } {
  const last = Math.max(0, ...headingRows);
  const repeated = JSON.stringify(rows[last - 1] ?? []);
  const found: DataRow[] = [];
  let empty = 0;
  let repeatedHeadings = 0;
  for (let at = last; at < rows.length; at++) {
    const cells = rows[at] ?? [];
    if (cells.every((cell) => cell === "")) {
      // The end of the last line is no row.
      if (at < rows.length - 1) empty++;
    } else if (last > 0 && JSON.stringify(cells) === repeated) repeatedHeadings++;
    else found.push({ number: at + 1, cells });
  }
  return { rows: found, empty, repeatedHeadings };
}
