import { grouping } from "../../lists/grouping.ts";
import type { Report } from "../report.ts";
import type { Sighting } from "../sighting.ts";
import { sightingKey } from "./same-sighting.ts";

/**
 * Rows of one example that say exactly the same: most likely one sighting, written and counted twice. Not reported:
 * rows that name no example, since two that are alike may be about two; an offer that was listed again, which is not
 * counted; and a row that was not read whole, since nobody knows whether it says the same.
 */
export function checkRepeats(sightings: readonly Sighting[], report: Report): void {
  const named = sightings.filter(
    ({ serial, example, relisted, document }) =>
      !document.leftOut && !relisted && (serial !== undefined || example !== undefined),
  );
  // The words of a row are put together only where another is of the same day and example.
  const bySeen = grouping(named, ({ seen, variant, serial, example }) =>
    [seen.text, variant, serial, example].join("\n"),
  );
  for (const rows of bySeen.values()) {
    if (rows.length < 2) continue;
    for (const [first, ...others] of grouping(rows, sightingKey).values()) {
      if (!first) continue;
      for (const { document, kind } of others) {
        const { file, line } = first.document.locate([]).place;
        report("repeated-sighting", document, [], {
          found: `a row that repeats line ${line}${file === document.file ? "" : ` of ${file}`}, and is counted as well`,
          expected: "each sighting once",
          remedy:
            kind === "offer"
              ? 'For an offer that was listed again, write "relisted: true", or give the day of each.'
              : "Remove one of them, or write what makes them different.",
        });
      }
    }
  }
}
