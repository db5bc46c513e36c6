import { CsvError, type Info, parse } from "csv-parse/sync";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { type Locus, locusBetween, startOf } from "../diagnostics/place.ts";

export interface CsvRow {
  /** Column name to text; an empty cell is left out. */
  readonly cells: ReadonlyMap<string, string>;
  locate(column?: string): Locus;
}

export interface CsvTable {
  readonly columns: readonly string[];
  readonly locateColumn: (column: string) => Locus;
  readonly rows: readonly CsvRow[];
  readonly diagnostics: readonly Diagnostic[];
}

type RawRow = { record: string[]; info: Info };

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

/** Reads RFC 4180 with a header row. A ragged row is reported and left out; the others still count. */
export function readCsv(file: string, text: string): CsvTable {
  const diagnostics: Diagnostic[] = [];
  let raw: RawRow[];
  try {
    raw = parse(text, {
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as RawRow[];
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const line = typeof problem.lines === "number" ? problem.lines : 1;
    const start = offsetOfLine(text, line);
    const locus = locusBetween(file, text, start, start + 1);
    const finding = {
      found: problem.message.split("\n")[0] ?? "",
      expected: "comma-separated values (RFC 4180)",
    };
    return {
      columns: [],
      locateColumn: () => startOf(file, text),
      rows: [],
      diagnostics: [diagnose("csv-syntax", locus, finding)],
    };
  }
  // `bytes` counts to the end of a row, in UTF-8; positions are only worked out where a row has a problem.
  let ends: number[] | undefined;
  const stretchOf = (index: number): [number, number] => {
    ends ??= rowEnds(text, raw);
    const start = index === 0 ? 0 : (ends[index - 1] ?? 0);
    const row = text.slice(start, ends[index]);
    const lead = row.length - row.replace(/^[\r\n]+/, "").length;
    return [start + lead, start + row.trimEnd().length];
  };
  const locateCell = (index: number, cell: number): Locus => {
    const [start, end] = stretchOf(index);
    const [from, to] = cellStretches(text, start, end)[cell] ?? [start, end];
    return locusBetween(file, text, from, to);
  };
  const locateRow = (index: number): Locus => {
    const [start, end] = stretchOf(index);
    return locusBetween(file, text, start, end);
  };
  const header = raw[0];
  const columns = header?.record ?? [];
  const rows: CsvRow[] = [];
  for (const [index, { record }] of raw.entries()) {
    if (index === 0 || record.every((cell) => cell === "")) continue;
    if (record.length !== columns.length) {
      diagnostics.push(
        diagnose("csv-syntax", locateRow(index), {
          found: `${record.length} cells`,
          expected: `${columns.length}, one for each column of the header`,
          remedy: "A cell that contains a comma stands in quotation marks.",
        }),
      );
      continue;
    }
    const cells = new Map<string, string>();
    for (const [cell, column] of columns.entries()) {
      const value = record[cell];
      if (value) cells.set(column, value);
    }
    rows.push({
      cells,
      locate: (column) =>
        column !== undefined && columns.includes(column)
          ? locateCell(index, columns.indexOf(column))
          : locateRow(index),
    });
  }
  return {
    columns,
    locateColumn: (column) =>
      columns.includes(column) ? locateCell(0, columns.indexOf(column)) : startOf(file, text),
    rows,
    diagnostics,
  };
}

/** Where each row ends, as offsets of the text. */
function rowEnds(text: string, raw: readonly RawRow[]): number[] {
  const utf8 = Buffer.from(text, "utf8");
  let [bytes, letters] = [0, 0];
  return raw.map(({ info }) => {
    letters += utf8.toString("utf8", bytes, info.bytes).length;
    bytes = info.bytes;
    return letters;
  });
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
