import type { ReadRecord } from "../../source/read-records.ts";
import type { Report } from "../report.ts";

/** Whether a file is one of several records, or empty. */
export const hasEntries = ({ document: { data } }: Pick<ReadRecord, "document">): boolean =>
  typeof data === "object" || data === undefined;

/** What a file of several records holds, each by its place or its name. */
export function entriesOf({ document }: ReadRecord, report: Report): [string | number, unknown][] {
  const { data } = document;
  if (Array.isArray(data)) return [...data.entries()];
  if (typeof data === "object" && data !== null) return Object.entries(data);
  if (hasEntries({ document })) return [];
  report("wrong-type", document, [], {
    found: "neither a list nor a mapping",
    expected: "a list of records",
  });
  return [];
}
