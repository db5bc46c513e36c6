import { CsvError, parse } from "csv-parse/sync";
import { lineEnds } from "../../source/csv-rows.ts";

export type Separator = "," | ";" | "\t";
export const separators: readonly Separator[] = [",", ";", "\t"];

/** A spreadsheet as rows of cells; a row's number is its place in the list, counted from 1, as the program shows it. */
export interface Sheet {
  readonly separator: Separator;
  readonly rows: readonly (readonly string[])[];
}

/** What cannot be read as a table at all. */
export class SheetError extends Error {}

const cells = (text: string, separator: Separator): string[][] =>
  parse(text, {
    delimiter: separator,
    record_delimiter: [...lineEnds],
    relax_column_count: true,
    // A quotation mark in the middle of a cell stands for itself, as in 12" rule.
    relax_quotes: true,
    skip_empty_lines: false,
    trim: true,
  });

/** How many cells the first rows would have, if this were the separator; an unfinished row at the end is left. */
function widths(text: string, separator: Separator): number[] {
  const found: number[] = [];
  let cells = 1;
  let filled = false;
  let quoted = false;
  let cellStart = true;
  for (let at = 0; at < text.length && at < 400_000 && found.length < 200; at++) {
    const letter = text[at];
    if (quoted) {
      if (letter !== '"') continue;
      if (text[at + 1] === '"') at++;
      else quoted = false;
    } else if (letter === '"' && cellStart) quoted = filled = true;
    else if (letter === "\n" || letter === "\r") {
      if (filled) found.push(cells);
      cells = 1;
      filled = false;
      cellStart = true;
      continue;
    } else if (letter === separator) {
      cells++;
      cellStart = true;
      continue;
    } else if (letter !== " ") filled = true;
    if (letter !== " ") cellStart = false;
  }
  if (filled && !quoted) found.push(cells);
  return found;
}

/** How well a separator makes a table: the share of rows with the commonest number of cells, and that number. */
function agreement(text: string, separator: Separator): number {
  const found = widths(text, separator);
  const counts = new Map<number, number>();
  for (const width of found) counts.set(width, (counts.get(width) ?? 0) + 1);
  const [width = 1, count = 0] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [];
  return count === 0 ? 0 : (count / found.length) ** 2 * Math.log2(width);
}

export function detectSeparator(text: string): Separator {
  const agreements = separators.map((separator) => [separator, agreement(text, separator)] as const);
  return [...agreements].sort((a, b) => b[1] - a[1])[0]?.[0] ?? ",";
}

/** Some programs write a first line that only names the separator; they do not count it as a row. */
const declaration = /^sep=(.)(?:\r\n|\n|\r)/i;

export function readSheet(written: string, given?: Separator): Sheet {
  const declared = declaration.exec(written)?.[1] as Separator | undefined;
  const text = written.replace(declaration, "");
  const separator = given ?? (declared && separators.includes(declared) ? declared : detectSeparator(text));
  try {
    return { separator, rows: cells(text, separator) };
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    throw new SheetError(
      problem.code === "CSV_QUOTE_NOT_CLOSED"
        ? "Found a cell that opens with a quotation mark and never closes; expected a second one."
        : `Found a row that cannot be read (${problem.message.split("\n")[0]}); expected comma-separated values (RFC 4180).`,
    );
  }
}
