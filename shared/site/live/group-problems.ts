import { type Diagnostic, inReadingOrder, isError } from "../../diagnostics/diagnostic.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import { recordsIn } from "../../source/read-records.ts";
import { recordValidator } from "../../validation/record-validator.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";
import type { LiveSource } from "./live-source.ts";

/**
 * What is wrong with the records of a group, as far as these show it by themselves: enough to be shown at once, while
 * the whole collection is being checked. Logs are left out, since a group knows only its own lines of them.
 */
export function groupProblems(group: FamilyGroup, { grouped, texts }: LiveSource): Diagnostic[] {
  const own = [...grouped.shared, ...group.texts];
  const read = recordsIn({ ...texts, texts: own, files: own, diagnostics: [] });
  const { diagnostics } = collectionFrom(read, recordValidator(), grouped.itemCount);
  const files = new Set(group.texts.flatMap(({ kind, file }) => (kind === "sightings" ? [] : file)));
  return inReadingOrder(
    [...read.diagnostics, ...diagnostics].filter((each) => isError(each) && files.has(each.file)),
  );
}
