import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import type { CollectionFile, FileKind } from "../../source/collection-files.ts";
import type { ReadCollection } from "../../source/read-records.ts";
import { markdownRecord, yamlRecord } from "../../source/record-file.ts";
import { recordValidator } from "../../validation/record-validator.ts";

/** The kinds of record that others are held against. */
export const referenceKinds: readonly FileKind[] = [
  "collection",
  "sources",
  "scale",
  "hazards",
  "family",
  "variant",
];

/** What `check` would say of one record, were it in the collection. */
export function recordProblems(read: ReadCollection, record: CollectionFile, text: string): Diagnostic[] {
  const { file } = record;
  const { document, diagnostics } = file.endsWith(".md")
    ? markdownRecord(file, text)
    : yamlRecord(file, text);
  if (!document) return [...diagnostics];
  const others = read.records.filter(
    ({ kind, file: other }) => referenceKinds.includes(kind) && other !== file,
  );
  const built = collectionFrom(
    { ...read, records: [...others, { ...record, document }], tables: [], diagnostics: [] },
    recordValidator(),
  );
  return built.diagnostics.filter((each) => each.file === file);
}
