import { CsvError, type Info, parse } from "csv-parse/sync";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { type Locus, locusBetween, startOf } from "../diagnostics/place.ts";
import { quoteFault } from "./csv-quotes.ts";

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

/** A row as its cells, and where it ends in the text. */
interface RawRow {
  readonly record: () => readonly string[];
  readonly end: number;
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

/** What may end a row, the longest first: a file that went from one program to another can have all of them. */
export const lineEnds: readonly string[] = ["\r\n", "\n", "\r"];

/**
 * Without quotation marks a row is a line: split here, at a tenth of what a reader of all of RFC 4180 takes. Null
 * where there is more to it.
 */
function plainRows(text: string): RawRow[] | null {
  if (text.includes('"') || /\r(?!\n)/.test(text)) return null;
  const rows: RawRow[] = [];
  for (let start = 0; start < text.length; ) {
    const found = text.indexOf("\n", start);
    const end = found < 0 ? text.length : found + 1;
    const line = text.slice(start, end).trim();
    if (line !== "") rows.push({ record: () => line.split(",").map((cell) => cell.trim()), end });
    start = end;
  }
  return rows;
}

function quotedRows(text: string): RawRow[] {
  const raw = parse(text, {
    info: true,
    record_delimiter: [...lineEnds],
    relax_column_count: true,
    skip_empty_lines: true,
    trim: true,
  }) as unknown as { record: string[]; info: Info }[];
  const utf8 = Buffer.from(text, "utf8");
  let [bytes, letters] = [0, 0];
  return raw.map(({ record, info }) => {
    // `bytes` counts to the end of a row, in UTF-8.
    letters += utf8.toString("utf8", bytes, info.bytes).length;
    bytes = info.bytes;
    return { record: () => record, end: letters };
  });
}

/** Reads RFC 4180 with a header row. A ragged row is reported and left out; the others still count. */
export function readCsv(file: string, text: string): CsvTable {
  let raw: RawRow[];
  try {
    raw = plainRows(text) ?? quotedRows(text);
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const line = offsetOfLine(text, typeof problem.lines === "number" ? problem.lines : 1);
    const { start, end, ...finding } = quoteFault(text) ?? {
      start: line,
      end: line + 1,
      found: problem.message.split("\n")[0] ?? "",
      expected: "comma-separated values (RFC 4180)",
    };
    const locus = locusBetween(file, text, start, end);
    return {
      columns: [],
      header: "",
      locateColumn: () => startOf(file, text),
      rows: [],
      diagnostics: [diagnose("csv-syntax", locus, finding)],
    };
  }
  const stretchOf = (index: number): [number, number] => {
    const start = raw[index - 1]?.end ?? 0;
    const end = raw[index]?.end ?? text.length;
    const row = text.slice(start, end);
    const lead = row.length - row.replace(/^[\r\n]+/, "").length;
    return [start + lead, start + row.trimEnd().length];
  };
  const lineAt = (index: number): string => text.slice(...stretchOf(index));
  // Of one row as many cells may be asked for as it has.
  let latest: { readonly index: number; readonly cells: readonly [number, number][] } | undefined;
  const locateCell = (index: number, cell: number): Locus => {
    const stretch = stretchOf(index);
    if (latest?.index !== index) latest = { index, cells: cellStretches(text, ...stretch) };
    const [from, to] = latest.cells[cell] ?? stretch;
    return locusBetween(file, text, from, to);
  };
  const locateRow = (index: number): Locus => {
    const [start, end] = stretchOf(index);
    return locusBetween(file, text, start, end);
  };
  const header = raw[0];
  const columns = header?.record() ?? [];
  const separator = columns.length === 1 ? /[;\t]/.exec(columns[0] ?? "")?.[0] : undefined;
  if (separator !== undefined) {
    const finding = {
      found: `cells separated by ${separator === ";" ? "semicolons" : "tabs"}`,
      expected: "commas (RFC 4180)",
      remedy: 'Save the sheet with commas, or bring it in with "fittedcase import sightings FILE".',
    };
    return {
      columns: [],
      header: "",
      locateColumn: () => startOf(file, text),
      rows: [],
      diagnostics: [diagnose("csv-syntax", locateRow(0), finding)],
    };
  }
  const placeOf = new Map(columns.map((column, at) => [column, at]));
  const firstOf = new Map([...columns.entries()].reverse().map(([at, column]) => [column, at]));
  const locateIn = (index: number, column: string | undefined): Locus | undefined => {
    const at = column === undefined ? undefined : firstOf.get(column);
    return at === undefined ? undefined : locateCell(index, at);
  };
  const rows: CsvRow[] = [];
  const ragged: { readonly index: number; readonly length: number }[] = [];
  for (const [index, { record }] of raw.entries()) {
    if (index === 0) continue;
    const found = record();
    if (found.every((cell) => cell === "")) continue;
    if (found.length !== columns.length) {
      ragged.push({ index, length: found.length });
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
  const usual = rows.length === 0 ? usualLength(ragged.map(({ length }) => length)) : undefined;
  const [first] = ragged.filter(({ length }) => length === usual);
  const ofHeader =
    usual === undefined || !first
      ? []
      : [
          diagnose("csv-syntax", locateRow(0), {
            found: `${columns.length} columns`,
            expected: `${usual}, as many as most rows have cells (the first is line ${locateRow(first.index).place.line})`,
            remedy:
              usual > columns.length
                ? "Either the header lacks a column, or a cell that contains a comma is not in quotation marks."
                : "Either the header has a column that no row has, or empty cells lack their commas.",
          }),
        ];
  const ofRows = ragged
    .filter(({ length }) => length !== usual)
    .map(({ index, length }) =>
      diagnose("csv-syntax", locateRow(index), {
        found: `${length} cells`,
        expected:
          usual === undefined
            ? `${columns.length}, one for each column of the header`
            : `${usual}, as most rows have`,
        remedy: length > (usual ?? columns.length) ? cellWithComma : emptyCell,
      }),
    );
  return {
    columns,
    header: lineAt(0),
    locateColumn: (column) => locateIn(0, column) ?? startOf(file, text),
    rows,
    diagnostics: [...ofHeader, ...ofRows],
  };
}

const cellWithComma = "Put a cell that contains a comma in quotation marks.";
const emptyCell = "Give an empty cell its comma too.";

/** How many cells most rows have. */
function usualLength(lengths: readonly number[]): number | undefined {
  const counts = new Map<number, number>();
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1);
  return lengths.length < 2 ? undefined : [...counts].find(([, count]) => count > lengths.length / 2)?.[0];
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
