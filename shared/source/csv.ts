import { CsvError } from "csv-parse/sync";
import { type Diagnostic, diagnose, type Finding } from "../diagnostics/diagnostic.ts";
import { type Locus, locusBetween, startOf } from "../diagnostics/place.ts";
import { type QuoteFault, quoteFault } from "./csv-quotes.ts";
import { type RawRow, rawRows } from "./csv-rows.ts";

export interface CsvRow {
  /** Column name to text; an empty cell is left out. Read anew whenever it is asked for: a log may be long. */
  readonly cells: ReadonlyMap<string, string>;
  /** One cell; empty where there is none. */
  cell(column: string): string;
  /** As it is written. */
  readonly line: string;
  locate(column?: string): Locus;
}

export interface CsvTable {
  readonly columns: readonly string[];
  /** The row of the columns' names, as it is written. */
  readonly header: string;
  readonly locateColumn: (column: string) => Locus;
  readonly rows: readonly CsvRow[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads RFC 4180 with a header row. A ragged row is reported and left out; the others still count. */
export function readCsv(file: string, text: string): CsvTable {
  const unreadable = (locus: Locus, finding: Finding): CsvTable => ({
    columns: [],
    header: "",
    locateColumn: () => startOf(file, text),
    rows: [],
    diagnostics: [diagnose("csv-syntax", locus, finding)],
  });
  let raw: RawRow[];
  try {
    raw = rawRows(text);
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const { start, end, ...finding } = quoteFault(text) ?? syntaxFault(text, problem);
    return unreadable(locusBetween(file, text, start, end), finding);
  }
  const { lineAt, locateCell, locateRow } = placesOf(file, text, raw);
  const columns = raw[0]?.record() ?? [];
  const separator = columns.length === 1 ? /[;\t]/.exec(columns[0] ?? "")?.[0] : undefined;
  if (separator !== undefined)
    return unreadable(locateRow(0), {
      found: `cells separated by ${separator === ";" ? "semicolons" : "tabs"}`,
      expected: "commas (RFC 4180)",
      remedy: 'Save the sheet with commas, or bring it in with "fittedcase import sightings FILE".',
    });
  const placeOf = new Map(columns.map((column, at) => [column, at]));
  const firstOf = new Map([...columns.entries()].reverse().map(([at, column]) => [column, at]));
  const locateIn = (index: number, column: string | undefined): Locus | undefined => {
    const at = column === undefined ? undefined : firstOf.get(column);
    return at === undefined ? undefined : locateCell(index, at);
  };
  const rows: CsvRow[] = [];
  const ragged: RaggedRow[] = [];
  for (const [index, { record }] of raw.entries()) {
    if (index === 0) continue;
    const found = record();
    if (found.every((cell) => cell === "")) continue;
    if (found.length !== columns.length) {
      ragged.push({ length: found.length, locate: () => locateRow(index) });
      continue;
    }
    rows.push({
      get cells() {
        const filled = record().map((value, at) => [columns[at] ?? "", value] as const);
        return new Map(filled.filter(([, value]) => value !== ""));
      },
      get line() {
        return lineAt(index);
      },
      cell: (column) => record()[placeOf.get(column) ?? -1] ?? "",
      locate: (column) => locateIn(index, column) ?? locateRow(index),
    });
  }
  // Where no row is as the header, and most are of one length, it is not the rows that are wrong.
  const usual = rows.length === 0 ? usualLength(ragged) : undefined;
  return {
    columns,
    header: lineAt(0),
    locateColumn: (column) => locateIn(0, column) ?? startOf(file, text),
    rows,
    diagnostics:
      usual === undefined
        ? ragged.map((row) => raggedRow(row, columns.length, "one for each column of the header"))
        : [
            wrongHeader(locateRow(0), columns.length, usual, ragged),
            ...ragged
              .filter(({ length }) => length !== usual)
              .map((row) => raggedRow(row, usual, "as most rows have")),
          ],
  };
}

/** Where the rows and cells of a text stand, sought only when somebody asks. */
function placesOf(file: string, text: string, raw: readonly RawRow[]) {
  const stretchOf = (index: number): [number, number] => {
    const start = raw[index - 1]?.end ?? 0;
    const end = raw[index]?.end ?? text.length;
    const row = text.slice(start, end);
    const lead = row.length - row.replace(/^[\r\n]+/, "").length;
    return [start + lead, start + row.trimEnd().length];
  };
  // Of one row as many cells may be asked for as it has.
  let latest: { readonly index: number; readonly cells: readonly [number, number][] } | undefined;
  return {
    lineAt: (index: number): string => text.slice(...stretchOf(index)),
    locateRow: (index: number): Locus => locusBetween(file, text, ...stretchOf(index)),
    locateCell: (index: number, cell: number): Locus => {
      const stretch = stretchOf(index);
      if (latest?.index !== index) latest = { index, cells: cellStretches(text, ...stretch) };
      return locusBetween(file, text, ...(latest.cells[cell] ?? stretch));
    },
  };
}

/** Where the cells of one row begin and end; RFC 4180 quoting, already found well-formed by the reader. */
function cellStretches(text: string, start: number, end: number): [number, number][] {
  const stretches: [number, number][] = [];
  let cellStart = start;
  let quoted = false;
  for (let at = start; at < end; at++) {
    if (text[at] === '"') quoted = !quoted;
    else if (text[at] === "," && !quoted) {
      stretches.push([cellStart, at]);
      cellStart = at + 1;
    }
  }
  stretches.push([cellStart, end]);
  return stretches;
}

/** A row with more or fewer cells than the header. */
interface RaggedRow {
  readonly length: number;
  readonly locate: () => Locus;
}

const raggedRow = ({ length, locate }: RaggedRow, expected: number, why: string): Diagnostic =>
  diagnose("csv-syntax", locate(), {
    found: `${length} cells`,
    expected: `${expected}, ${why}`,
    remedy:
      length > expected
        ? "Put a cell that contains a comma in quotation marks."
        : "Give an empty cell its comma too.",
  });

function wrongHeader(locus: Locus, columns: number, usual: number, ragged: readonly RaggedRow[]): Diagnostic {
  const first = ragged.find(({ length }) => length === usual)?.locate().place.line;
  return diagnose("csv-syntax", locus, {
    found: `${columns} columns`,
    expected: `${usual}, as many as most rows have cells (the first is line ${first})`,
    remedy:
      usual > columns
        ? "Either the header lacks a column, or a cell that contains a comma is not in quotation marks."
        : "Either the header has a column that no row has, or empty cells lack their commas.",
  });
}

/** How many cells most rows have. */
function usualLength(rows: readonly RaggedRow[]): number | undefined {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  return rows.length < 2 ? undefined : [...counts].find(([, count]) => count > rows.length / 2)?.[0];
}

/** What the reader itself says, on the line that it has come to. */
function syntaxFault(text: string, problem: CsvError): QuoteFault {
  const start = offsetOfLine(text, typeof problem.lines === "number" ? problem.lines : 1);
  return {
    start,
    end: start + 1,
    found: problem.message.split("\n")[0] ?? "",
    expected: "comma-separated values (RFC 4180)",
  };
}

function offsetOfLine(text: string, line: number): number {
  let at = 0;
  for (let count = 1; count < line; count++) {
    const next = text.indexOf("\n", at);
    if (next < 0) return at;
    at = next + 1;
  }
  return at;
}
