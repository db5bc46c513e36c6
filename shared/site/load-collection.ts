import { type Assessments, assessCollection } from "../assessments/assess-collection.ts";
import { concernsOf } from "../assessments/concerns.ts";
import { type Diagnostic, inReadingOrder } from "../diagnostics/diagnostic.ts";
import { tally } from "../diagnostics/report.ts";
import { buildCollection } from "../records/build-collection.ts";
import type { Collection } from "../records/collection.ts";
import { readCollection } from "../source/read-records.ts";
import { recordValidator } from "../validation/record-validator.ts";

export interface LoadedCollection {
  /** Null where the content has errors: nothing is shown of a collection that is not sound. */
  readonly sound: { readonly collection: Collection; readonly assessments: Assessments } | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly filesRead: number;
}

/** Content → records → assessments: the first half of the way, which `check` and `build` share. */
export function loadCollection(root: string): LoadedCollection {
  const read = readCollection(root);
  const { collection, diagnostics } = buildCollection(read, recordValidator());
  const found = [...read.diagnostics, ...diagnostics];
  const filesRead = read.files.length;
  if (!collection || tally(found).errors > 0) {
    return { sound: null, diagnostics: inReadingOrder(found), filesRead };
  }
  const assessments = assessCollection(collection);
  return {
    sound: { collection, assessments },
    diagnostics: inReadingOrder([...found, ...concernsOf(collection, assessments)]),
    filesRead,
  };
}
