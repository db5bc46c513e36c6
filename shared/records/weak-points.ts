import type { Collection } from "./collection.ts";
import type { Item } from "./item.ts";
import type { Report } from "./report.ts";
import { foldSerial } from "./serial.ts";
import type { Sighting } from "./sighting.ts";
import type { Part, Variant } from "./variant.ts";

/** What is allowed, and rests on little: at most one warning of a sort for each record or file. */
export function reportWeakPoints(collection: Collection, report: Report): void {
  for (const item of collection.items.values()) {
    if (item.photos.length === 0) {
      const finding = {
        found: "no photograph",
        expected: "at least one, so that others can check what is written",
      };
      report("no-photograph", item.document, ["title"], finding, "key");
    }
    const variant = collection.variants.get(item.variant);
    if (variant) reportMarks(item, variant, report);
    reportCustody(item, report);
  }
  reportSourceless(collection.sightings, report);
}

/** "a", "b" and 3 more */
function someOf(names: readonly string[]): string {
  const first = names.slice(0, 3).map((name) => `"${name}"`);
  const more = names.length - first.length;
  return more > 0 ? `${first.join(", ")} and ${more} more` : first.join(", ");
}

/** The marks that a right part of this set bears; where its number is not known, those that do not need it. */
const expectedMarks = (part: Part, set: string | undefined): string[] =>
  part.marks.flatMap((mark) => {
    if (!mark.includes("{set}")) return [mark];
    return set === undefined ? [] : [mark.replaceAll("{set}", set)];
  });

function reportMarks(item: Item, variant: Variant, report: Report): void {
  const without = [...item.parts].flatMap(([id, lines]) => {
    const part = variant.parts.get(id);
    if (!part) return [];
    const expected = expectedMarks(part, item.set).map(foldSerial);
    const lacking = lines.some(({ state, belongs, marks }) => {
      // A spare one belongs to another set.
      if (state !== "present" || belongs === "spare") return false;
      const read = marks.map(foldSerial);
      return expected.some((mark) => !read.includes(mark));
    });
    return lacking ? [id] : [];
  });
  const [first] = without;
  if (first === undefined) return;
  report(
    "mark-not-recorded",
    item.document,
    ["parts", first],
    {
      found: `${someOf(without)} present without the marks that the reference expects`,
      expected: `"marks" as read on each, or "unverified"`,
    },
    "key",
  );
}

function reportCustody(item: Item, report: Report): void {
  const bare = item.provenance.flatMap(({ evidence, source, date }, at) =>
    evidence === undefined && source === undefined ? [{ at, date: date.text }] : [],
  );
  const [first] = bare;
  if (!first) return;
  const found = bare.length === 1 ? "an event" : `${bare.length} events`;
  report("evidence-missing", item.document, ["provenance", first.at], {
    found: `${found} without evidence (${bare.map(({ date }) => date).join("; ")})`,
    expected: '"evidence", how it is known, or "source"',
  });
}

/** A log may have 100,000 rows of one origin: they are told of once. */
function reportSourceless(sightings: readonly Sighting[], report: Report): void {
  const byFile = new Map<string, { readonly first: Sighting; count: number }>();
  for (const sighting of sightings) {
    if (sighting.source !== undefined) continue;
    const known = byFile.get(sighting.document.file);
    if (known) known.count++;
    else byFile.set(sighting.document.file, { first: sighting, count: 1 });
  }
  for (const { first, count } of byFile.values()) {
    const more = count > 1 ? `, and ${(count - 1).toLocaleString("en")} more in this file` : "";
    report("source-missing", first.document, ["source"], {
      found: `a sighting without a source${more}`,
      expected: "an id of the bibliography",
    });
  }
}
