import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { CollectionFile } from "./collection-files.ts";
import { type CsvTable, readCsv } from "./csv.ts";
import type { SourceDocument } from "./document.ts";
import { type CollectionTexts, readTexts } from "./read-texts.ts";
import { markdownRecord, yamlRecord } from "./record-file.ts";

export interface ReadRecord extends CollectionFile {
  readonly document: SourceDocument;
}

export interface ReadTable extends CollectionFile {
  readonly table: CsvTable;
}

/** All that was found in a collection's folder, read but not yet understood. */
export interface ReadCollection {
  readonly records: readonly ReadRecord[];
  /** With what is wrong with their rows, which is told of where their header is right. */
  readonly tables: readonly ReadTable[];
  readonly files: readonly CollectionFile[];
  readonly beside: ReadonlySet<string>;
  readonly diagnostics: readonly Diagnostic[];
}

/** A value inside a record, taken for a record of its own: one entry of a bibliography, one row of a log. */
export const within = (document: SourceDocument, key: string | number, data: unknown): SourceDocument => ({
  file: document.file,
  data,
  body: "",
  locate: (path, at) => document.locate([key, ...path], at),
});

/** Takes texts apart. */
export function recordsIn({
  texts,
  files,
  beside,
  diagnostics: unreadable,
}: CollectionTexts): ReadCollection {
  const records: ReadRecord[] = [];
  const tables: ReadTable[] = [];
  // One by one, below: a damaged file may have more to be told of than a call takes arguments.
  const diagnostics = [...unreadable];
  for (const { text, hash: _, ...file } of texts) {
    if (file.file.endsWith(".csv")) {
      tables.push({ ...file, table: readCsv(file.file, text) });
      continue;
    }
    const result = file.file.endsWith(".md") ? markdownRecord(file.file, text) : yamlRecord(file.file, text);
    for (const problem of result.diagnostics) diagnostics.push(problem);
    if (result.document) records.push({ ...file, document: result.document });
  }
  return { records, tables, files, beside, diagnostics };
}

export const readCollection = (root: string, isWanted?: (file: CollectionFile) => boolean): ReadCollection =>
  recordsIn(readTexts(root, isWanted));
