import { hash } from "node:crypto";
import { type Diagnostic, isError } from "../../../diagnostics/diagnostic.ts";
import type { Collection } from "../../../records/collection.ts";
import { collectionFrom } from "../../../records/intake/collection-from.ts";
import type { CollectionFile } from "../../../source/collection-files.ts";
import { type ReadCollection, readCollection } from "../../../source/read-records.ts";
import { markdownRecord } from "../../../source/record-file.ts";
import { readTextFile } from "../../../source/text-file.ts";
import { recordValidator } from "../../../validation/record-validator.ts";
import { recordProblems, referenceKinds } from "../../collection/record-problems.ts";
import { replaceText } from "../../writing/replace-text.ts";

/** The references of a collection, and which items there are; the items themselves are not read. */
export interface BenchReference {
  readonly read: ReadCollection;
  /** Null where the collection's own settings are not there or not sound. */
  readonly collection: Collection | null;
  readonly problems: readonly Diagnostic[];
  readonly items: readonly CollectionFile[];
}

export function benchReference(root: string): BenchReference {
  const read = readCollection(root, ({ kind }) => referenceKinds.includes(kind));
  const { collection, diagnostics } = collectionFrom(read, recordValidator());
  return {
    read,
    collection,
    problems: [...read.diagnostics, ...diagnostics].filter(isError),
    items: read.files.filter(({ kind }) => kind === "item"),
  };
}

/** An item's file as it stands now. */
export interface BenchRecord {
  readonly file: CollectionFile;
  /** Without the byte order mark. */
  readonly text: string;
  /** Changes with every byte of the file. */
  readonly version: string;
  readonly data: Readonly<Record<string, unknown>>;
  /** What `check` reports as an error of this file. */
  readonly problems: readonly Diagnostic[];
}

export const recordVersion = (text: string): string => hash("sha256", text).slice(0, 20);

/** Changes with what a record says of one part, one feature, or the outfit itself, and with nothing else. */
export const valueVersion = (value: unknown): string => recordVersion(JSON.stringify(value ?? null));

/** What is wrong with a text of an item's, were it in the file. */
export const problemsOf = (reference: BenchReference, file: CollectionFile, text: string): Diagnostic[] =>
  recordProblems(reference.read, file, text).filter(isError);

/** An item's file as it can be read, not yet held against its reference: a list of ten thousand is read so. */
export function readBenchRecord(root: string, file: CollectionFile): BenchRecord {
  const { text, diagnostics } = readTextFile(root, file.file);
  if (text === null) return { file, text: "", version: "", data: {}, problems: diagnostics };
  const { document, diagnostics: problems } = markdownRecord(file.file, text);
  const data = (document?.data ?? {}) as BenchRecord["data"];
  return { file, text, version: recordVersion(text), data, problems };
}

/** The record of an id, with all that is wrong with it; null where there is none. */
export function benchRecord(root: string, reference: BenchReference, id: string): BenchRecord | null {
  const file = reference.items.find((each) => each.id === id);
  if (!file) return null;
  const record = readBenchRecord(root, file);
  return record.version === "" ? record : { ...record, problems: problemsOf(reference, file, record.text) };
}

/** Puts a new text into an item's file, unless the file is no longer what it was taken for. */
export const writeRecord = (root: string, { file, version }: BenchRecord, text: string): boolean =>
  replaceText(root, file.file, (now) => recordVersion(now) === version, text);
