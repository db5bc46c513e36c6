import { calendarYears } from "../../dates/calendar-years.ts";
import { isLeftOut, type SourceDocument } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import type { Report } from "../report.ts";

/** The years in which offers were watched for, by themselves and against the log. */
export function checkWatching(
  { settings: { watching }, sightings }: Collection,
  report: Report,
  document: SourceDocument,
): void {
  if (!watching) return;
  if (![watching.earliest, watching.latest].every(Number.isFinite)) {
    report("wrong-value", document, ["watching"], {
      found: `"${watching.text}"`,
      expected: 'a first and a last year, such as "2003/2024"',
    });
    return;
  }
  // Offers before these years were found in old lists. Those after them are news, and the years most often forgotten.
  const last = calendarYears(watching).last ?? Number.POSITIVE_INFINITY;
  const later = sightings.filter(
    ({ kind, relisted, seen, document: row }) =>
      kind === "offer" &&
      !relisted &&
      !isLeftOut(row, "relisted") &&
      (calendarYears(seen).first ?? last) > last,
  );
  const [latest] = later.map(({ seen }) => seen).sort((a, b) => Number(b.earliest) - Number(a.earliest));
  if (!latest) return;
  const offers = later.length === 1 ? "1 offer" : `${later.length} offers`;
  report("offers-after-watching", document, ["watching"], {
    found: `"${watching.text}", and ${offers} seen later (the latest "${latest.text}"), which ${later.length === 1 ? "is" : "are"} not counted`,
    expected: "years that extend to the last in which offers were watched for",
  });
}
