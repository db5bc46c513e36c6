import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import { addUnder } from "../../lists/grouping.ts";
import type { Path, SourceDocument } from "../../source/document.ts";
import type { ReadRow, RowProblem } from "./read-row.ts";

/** A row that was held against the collection: it may come in, is there already, or is refused. */
export type CheckedRow<Content> = { readonly row: ReadRow } & (
  | NewRow<Content>
  | { readonly fate: "known" }
  | { readonly fate: "rejected"; readonly problems: readonly RowProblem[] }
);

interface NewRow<Content> {
  readonly fate: "new";
  readonly content: Content;
  /** The file of a row that may say the same in other words. */
  readonly resembles?: string | undefined;
}

export interface RowDocuments {
  /** A record made of a row. Its places say which row and which field, and cost nothing to find. */
  readonly documentOf: (file: string, number: number, data: unknown, body: string) => SourceDocument;
  /** The errors that `check` has about the rows, by the row's number, in its own words. */
  readonly errorsByRow: (
    diagnostics: readonly Diagnostic[],
    isOurs: (file: string) => boolean,
  ) => Map<number, RowProblem[]>;
}

/** Places of rows that are in no file yet: the line is the row's number, the column stands for the field. */
export function rowDocuments(): RowDocuments {
  const fields: string[] = [];
  const columnOf = new Map<string, number>();
  const column = (field: string) => {
    let known = columnOf.get(field);
    if (known === undefined) {
      known = fields.push(field);
      columnOf.set(field, known);
    }
    return known;
  };
  return {
    documentOf: (file, number, data, body) => ({
      file,
      data,
      body,
      locate(path: Path) {
        // A part or a feature has a column of its own in the spreadsheet.
        const own = path[0] === "parts" || path[0] === "features" ? path[1] : undefined;
        const at = column(String(own ?? path[0] ?? ""));
        return { place: { file, line: number, column: at, endLine: number, endColumn: at + 1 }, text: "" };
      },
    }),
    errorsByRow(diagnostics, isOurs) {
      const byRow = new Map<number, RowProblem[]>();
      for (const each of diagnostics) {
        if (!isError(each) || !isOurs(each.file)) continue;
        const problem = { field: fields[each.column - 1] ?? "", reason: each.message };
        addUnder(byRow, each.line, problem);
      }
      return byRow;
    },
  };
}
