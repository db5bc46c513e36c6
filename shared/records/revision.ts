import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { Path, SourceDocument } from "../source/document.ts";
import type { Report } from "./report.ts";
import { asDate, asList } from "./text.ts";

/** A change of a record that its author tells of. */
export interface Revision {
  readonly date: EdtfDate;
  readonly note: string;
}

export type RawRevisions = readonly { readonly date: string | number; readonly note: string }[];

/** The dates of the revisions of a record, each with its place in the file. */
export function revisionDates(document: SourceDocument): { readonly date: EdtfDate; readonly path: Path }[] {
  const { revisions } = document.data as { revisions?: RawRevisions };
  return asList(revisions).flatMap((each, at) => {
    const date = asDate(each.date);
    return date ? [{ date, path: ["revisions", at, "date"] }] : [];
  });
}

/** Where the beginning of a date is open or not known, any other may be later. */
const beginning = (date: EdtfDate): number => date.earliest ?? Number.NEGATIVE_INFINITY;

/** The newest first; of one day as they were written. */
export const revisionsFrom = (raw: RawRevisions | undefined): readonly Revision[] =>
  asList(raw)
    .flatMap(({ date, note }) => {
      const read = asDate(date);
      return read ? [{ date: read, note }] : [];
    })
    .sort((a, b) => (beginning(a.date) === beginning(b.date) ? 0 : beginning(b.date) - beginning(a.date)));

/** When a record was last changed: as it says, else by the newest of what it tells of. */
export function lastChanged(
  updated: EdtfDate | undefined,
  [newest]: readonly Revision[],
  examined?: EdtfDate,
): EdtfDate | undefined {
  if (updated !== undefined || newest === undefined) return updated ?? examined;
  return examined !== undefined && beginning(examined) > beginning(newest.date) ? examined : newest.date;
}

interface Changed {
  readonly document: SourceDocument;
  readonly updated: EdtfDate | undefined;
  readonly examined?: EdtfDate | undefined;
}

/** A record cannot have been changed for the last time before a change, or an examination, that it tells of. */
export function checkUpdated(report: Report, { document, updated, examined }: Changed): void {
  const latest = updated?.latest;
  if (updated === undefined || typeof latest !== "number") return;
  const examination = examined ? [{ date: examined, path: ["examined"] }] : [];
  for (const { date, path } of [...examination, ...revisionDates(document)]) {
    if (beginning(date) <= latest) continue;
    report("updated-before-change", document, path, {
      found: `"${date.text}", which is later than "updated" (${updated.text})`,
      expected: 'the day of the last change in "updated"',
      remedy: 'If you leave "updated" out, the newest such day in the record is used.',
    });
  }
}
