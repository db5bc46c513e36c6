import type { DayNumber } from "../../dates/day-number.ts";
import type { EdtfDate } from "../../dates/edtf-interval.ts";
import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import { type Path, placeIn, type SourceDocument } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import { revisionDates } from "../revision.ts";

/**
 * What nobody can have seen yet. It depends on the current day, so it is reported to those who check, and is no part
 * of a site, which is the same whenever it is built.
 */
export function datesAhead(collection: Collection, today: DayNumber): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const look = (document: SourceDocument, path: Path, date: EdtfDate | undefined): void => {
    const earliest = date?.earliest;
    if (date === undefined || typeof earliest !== "number" || earliest <= today) return;
    const finding = {
      found: `"${date.text}", which is in the future`,
      expected: "a day no later than today",
    };
    diagnostics.push(diagnose("date-ahead", placeIn(document, path), finding));
  };
  for (const { document, examined, updated, provenance } of collection.items.values()) {
    look(document, ["examined"], examined);
    look(document, ["updated"], updated);
    for (const [at, { date }] of provenance.entries()) look(document, ["provenance", at, "date"], date);
  }
  for (const { document, updated } of collection.articles.values()) look(document, ["updated"], updated);
  const { items, variants, families, articles } = collection;
  for (const { document } of [items, variants, families, articles].flatMap((each) => [...each.values()]))
    for (const { date, path } of revisionDates(document)) look(document, path, date);
  for (const { document, seen } of collection.sightings) look(document, ["seen"], seen);
  return diagnostics;
}
