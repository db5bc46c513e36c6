import { CsvError, parse } from "csv-parse/sync";

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
    relax_column_count: true,
    // A quotation mark in the middle of a cell stands for itself, as in 12" rule.
    relax_quotes: true,
    skip_empty_lines: false,
    trim: true,
  }) as string[][];

/** How many rows of a sample have the commonest number of cells, times the separators in each. */
function agreement(sample: string, separator: Separator): number {
  let rows: string[][];
  try {
    rows = cells(sample, separator);
  } catch {
    return 0;
  }
  const widths = new Map<number, number>();
  for (const { length } of rows.filter((row) => row.some((cell) => cell !== ""))) {
    widths.set(length, (widths.get(length) ?? 0) + 1);
  }
  const [width = 1, count = 0] = [...widths].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [];
  return count * (width - 1);
}

export function detectSeparator(text: string): Separator {
  // The cut falls between lines; a quoted cell that it splits only spoils the sample of every separator alike.
  const end = text.length > 50_000 ? text.lastIndexOf("\n", 50_000) : text.length;
  const sample = text.slice(0, end < 0 ? text.length : end);
  const agreements = separators.map((separator) => [separator, agreement(sample, separator)] as const);
  return [...agreements].sort((a, b) => b[1] - a[1])[0]?.[0] ?? ",";
}

/** Some programs write a first line that only names the separator; they do not count it as a row. */
const declaration = /^sep=(.)\r?\n/i;

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
