import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import { reportAsText } from "../../diagnostics/report.ts";
import type { Collection } from "../../records/collection.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import { type ReadCollection, readCollection } from "../../source/read-records.ts";
import { recordValidator } from "../../validation/record-validator.ts";

export interface KnownCollection {
  readonly read: ReadCollection;
  /** Every record that is sound by itself; others of the collection may not be. */
  readonly collection: Collection;
  readonly errors: readonly Diagnostic[];
}

/** What is known of a collection that is still being written; null, after its errors were told, without settings. */
export function knownCollection(root: string, err: (text: string) => void): KnownCollection | null {
  const read = readCollection(root);
  const { collection, diagnostics } = collectionFrom(read, recordValidator());
  const errors = [...read.diagnostics, ...diagnostics].filter(isError);
  if (collection) return { read, collection, errors };
  err(reportAsText(errors, read.files.length));
  return null;
}
