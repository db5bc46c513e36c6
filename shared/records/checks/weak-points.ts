import { grouping } from "../../lists/grouping.ts";
import { isLeftOut } from "../../source/document.ts";
import { markOfSet, setPlace } from "../../terms/set-place.ts";
import type { Collection } from "../collection.ts";
import type { Item } from "../item.ts";
import type { Report } from "../report.ts";
import { isMarkOfSet } from "../set-marks.ts";
import type { Sighting } from "../sighting.ts";
import type { Part, Variant } from "../variant.ts";

/** What is allowed, and rests on little: at most one warning of a sort for each record or file. */
export function reportWeakPoints(collection: Collection, report: Report): void {
  for (const item of collection.items.values()) {
    if (item.photos.length === 0 && !isLeftOut(item.document, "photos")) {
      const finding = {
        found: "no photograph",
        expected: "at least one, so that others can check what is written",
      };
      const place = isLeftOut(item.document, "title") ? [] : ["title"];
      report("no-photograph", item.document, place, finding, "key");
    }
    const variant = collection.variants.get(item.variant);
    if (variant && !isLeftOut(item.document, "assembled")) reportMarks(item, variant, report);
    reportCustody(item, report);
  }
  reportSourceless(collection.sightings, report);
  reportPrices(collection.sightings, report);
}

/** "a", "b" and 3 more */
function someOf(names: readonly string[]): string {
  const first = names.slice(0, 3).map((name) => `"${name}"`);
  const more = names.length - first.length;
  return more > 0 ? `${first.join(", ")} and ${more} more` : first.join(", ");
}

/** The marks that a right part of a set bears; where the set's number is not known, those that do not need it. */
const expectedMarks = (part: Part, set: string | undefined): readonly string[] =>
  set === undefined ? part.marks.filter((mark) => !mark.includes(setPlace)) : part.marks;

function reportMarks(item: Item, variant: Variant, report: Report): void {
  const without: string[] = [];
  const withOthers: {
    readonly id: string;
    readonly read: readonly string[];
    readonly wanted: readonly string[];
  }[] = [];
  for (const [id, lines] of item.parts) {
    const part = variant.parts.get(id);
    // One that came out of another case bears that one's marks.
    if (!part || item.assembled.includes(id)) continue;
    if (isLeftOut(item.document, "parts", id) || isLeftOut(variant, "parts", id, "marks")) continue;
    const wanted = expectedMarks(part, item.set);
    const set = item.set ?? setPlace;
    for (const { state, belongs, marks } of lines) {
      // A spare one belongs to another set.
      if (state !== "present" || belongs === "spare") continue;
      const isRead = (mark: string) => marks.some((read) => isMarkOfSet(read, mark, set));
      if (wanted.every(isRead)) continue;
      if (marks.length === 0) without.push(id);
      else withOthers.push({ id, read: marks, wanted: wanted.map((mark) => markOfSet(mark, set)) });
      break;
    }
  }
  const [first] = without;
  const [other] = withOthers;
  const more = withOthers.length > 1 ? `, and ${withOthers.length - 1} more with others than expected` : "";
  const others = other && `"${other.id}" with the ${marksInWords(other.read)}${more}`;
  if (first !== undefined) {
    const finding = {
      found: `${someOf(without)} present without the marks that the reference expects${others ? `, and ${others}` : ""}`,
      expected: `"marks", as read on each, or "unverified"`,
    };
    report("mark-not-recorded", item.document, ["parts", first], finding, "key");
  } else if (other && others) {
    const finding = { found: others, expected: `the ${marksInWords(other.wanted)}, or "unverified"` };
    report("mark-not-recorded", item.document, ["parts", other.id], finding, "key");
  }
}

const marksInWords = (marks: readonly string[]): string =>
  `${marks.length === 1 ? "mark" : "marks"} ${marks.map((mark) => `"${mark}"`).join(", ")}`;

function reportCustody(item: Item, report: Report): void {
  const bare = item.provenance.flatMap(({ evidence, source, date }, at) =>
    evidence === undefined && source === undefined && !isLeftOut(item.document, "provenance", at)
      ? [{ at, date: date.text }]
      : [],
  );
  const [first] = bare;
  if (!first) return;
  const found = bare.length === 1 ? "an event" : `${bare.length} events`;
  report("evidence-missing", item.document, ["provenance", first.at], {
    found: `${found} without evidence (${bare.map(({ date }) => date).join("; ")})`,
    expected: '"evidence" (how it is known) or "source"',
  });
}

/** A log may have 100,000 rows of one origin: they are told of once. */
function reportSourceless(sightings: readonly Sighting[], report: Report): void {
  const sourceless = sightings.filter(
    ({ source, document }) => source === undefined && !isLeftOut(document, "source"),
  );
  for (const [first, ...others] of byFile(sourceless)) {
    if (!first) continue;
    report("source-missing", first.document, ["source"], {
      found: `a sighting without a source${andMore(others)}`,
      expected: "the id of a source in content/sources.yaml",
    });
  }
}

/** A price is a number and its currency; a sheet may give all of its rows the one without the other. */
function reportPrices(sightings: readonly Sighting[], report: Report): void {
  const halves = sightings.filter(
    ({ price, currency, document }) =>
      (price === undefined) !== (currency === undefined) &&
      !isLeftOut(document, "price") &&
      !isLeftOut(document, "currency"),
  );
  const bare = halves.filter(({ price }) => price !== undefined);
  for (const [first, ...others] of byFile(bare)) {
    if (!first) continue;
    report("price-incomplete", first.document, ["price"], {
      found: `a price without a currency, "${first.price}"${andMore(others)}`,
      expected: "its currency, by its code (ISO 4217)",
    });
  }
  const idle = halves.filter(({ currency }) => currency !== undefined);
  for (const [first, ...others] of byFile(idle)) {
    if (!first) continue;
    report("price-incomplete", first.document, ["currency"], {
      found: `a currency without a price, "${first.currency}"${andMore(others)}`,
      expected: "the price, or no currency",
    });
  }
}

const byFile = (sightings: readonly Sighting[]): Iterable<readonly Sighting[]> =>
  grouping(sightings, ({ document }) => document.file).values();

const linesShown = 3;

/** ", and 5 more in this file (lines 7, 9, 12 and on)" */
function andMore(others: readonly Sighting[]): string {
  if (others.length === 0) return "";
  const lines = others.slice(0, linesShown).map(({ document }) => document.locate([]).place.line);
  const where = `${lines.length > 1 ? "lines" : "line"} ${lines.join(", ")}`;
  return `, and ${others.length.toLocaleString("en")} more in this file (${where}${others.length > linesShown ? " and on" : ""})`;
}
