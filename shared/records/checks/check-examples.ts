import { grouping } from "../../lists/grouping.ts";
import { isLeftOut, type SourceDocument } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import type { Item } from "../item.ts";
import type { Report } from "../report.ts";
import { serialKey } from "../serial.ts";
import type { Sighting } from "../sighting.ts";

/**
 * A name without what people write sometimes one way, sometimes another: capitals, spaces and hyphens. Those between
 * digits stay, since they separate one number from another.
 */
const loose = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s_\u2010-\u2015-]+/g, "-")
    .replace(/(?<!\d)-|-(?!\d)/g, "");

/** Whether nothing of what tells one example from another was left out. */
const isTold = ({ document }: { readonly document: SourceDocument }): boolean =>
  !document.leftOut ||
  !["variant", "serial", "example", "census"].some((field) => isLeftOut(document, field));

const nameOf = ({ example }: Sighting): string => example?.trim() ?? "";

/**
 * Compares the names of examples within a variant. One name with two serials joins what may be two outfits. Two names
 * that are nearly one, the id of an item that bears no name, or a serial in the place of a name, separate what may be
 * one.
 */
export function checkExamples({ items, sightings }: Collection, report: Report): void {
  const counted = grouping(
    [...items.values()].filter((item) => item.census && isTold(item)),
    ({ variant }) => variant,
  );
  const told = sightings.filter(isTold);
  const named = grouping(
    told.filter((row) => nameOf(row) !== ""),
    ({ variant }) => variant,
  );
  const logged = grouping(told, ({ variant }) => variant);
  for (const [variant, rows] of named) {
    const own = counted.get(variant) ?? [];
    const byName = grouping(rows, nameOf);
    checkSpelling(byName, own, report);
    checkIds(byName, own, report);
    checkColumns(byName, [...own, ...(logged.get(variant) ?? [])], report);
    checkSerials(byName, own, report);
  }
  checkRepeated(told, report);
}

/** An offer that was listed again is of an example that is known, and should say which. Told once a file. */
function checkRepeated(rows: readonly Sighting[], report: Report): void {
  const unnamed = rows.filter((row) => row.relisted && nameOf(row) === "" && row.serial === undefined);
  for (const [row] of grouping(unnamed, ({ document }) => document.file).values()) {
    if (!row) continue;
    report("doubtful-example", row.document, ["relisted"], {
      found: "an offer that was listed again, and does not say of which example",
      expected: '"example" or "serial", as in the row of the first offer',
    });
  }
}

type ByName = ReadonlyMap<string, readonly Sighting[]>;

function checkSpelling(byName: ByName, items: readonly Item[], report: Report): void {
  const known = new Map(items.flatMap(({ example }) => (example ? [[loose(example), example.trim()]] : [])));
  for (const [name, [row]] of byName) {
    const other = known.get(loose(name));
    if (other === undefined) known.set(loose(name), name);
    else if (other !== name && row)
      report("doubtful-example", row.document, ["example"], {
        found: `"${name}", which counts as a different example from "${other}"`,
        expected: "one spelling for one example",
        remedy: `Did you mean "${other}"?`,
      });
  }
}

/** An item goes by its `example` or its serial, and not by its id. */
function checkIds(byName: ByName, items: readonly Item[], report: Report): void {
  const byId = new Map(items.map((item) => [loose(item.id), item]));
  for (const [name, rows] of byName) {
    const item = byId.get(loose(name));
    const [row] = rows;
    if (!item || !row || (item.example !== undefined && loose(item.example) === loose(name))) continue;
    const { id, example, serial } = item;
    const isOne = (each: Sighting) =>
      serial !== undefined && each.serial !== undefined && serialKey(each.serial) === serialKey(serial);
    if (rows.some(isOne)) continue;
    report("doubtful-example", row.document, ["example"], {
      found: `"${name}", which counts as a different example from the item "${id}"`,
      expected:
        example === undefined
          ? `"example: ${name}" in that item too, if they are one`
          : `"${example}", as in that item, if they are one`,
    });
  }
}

/** A serial in the place of a name: it names an example of its own, beside the one that bears it. */
function checkColumns(
  byName: ByName,
  all: readonly Pick<Item, "serial" | "example">[],
  report: Report,
): void {
  const bearers = grouping(
    all.filter(({ serial }) => serial !== undefined),
    ({ serial = "" }) => serialKey(serial),
  );
  for (const [name, [row]] of byName) {
    const bearing = bearers.get(serialKey(name));
    if (!row || !bearing || bearing.some(({ example }) => example?.trim() === name)) continue;
    report("doubtful-example", row.document, ["example"], {
      found: `"${name}", a serial of this variant, which as a name counts as a different example`,
      expected: "a name that is not a serial",
      remedy: 'Did you mean the column "serial"?',
    });
  }
}

/** Where an item bears the name beside its own serial, its owner has decided, and what others read is left as they did. */
function checkSerials(byName: ByName, items: readonly Item[], report: Report): void {
  const decided = new Set(
    items.flatMap(({ example, serial }) => (example && serial ? [example.trim()] : [])),
  );
  for (const [name, rows] of byName) {
    if (decided.has(name)) continue;
    let first: string | undefined;
    for (const { serial, document } of rows) {
      if (serial === undefined) continue;
      first ??= serial;
      if (serialKey(first) !== serialKey(serial))
        report("doubtful-example", document, ["serial"], {
          found: `"${serial}" as the serial of "${name}", which has "${first}" elsewhere and counts as one example`,
          expected: "one serial for each example, or a different name for each",
          remedy:
            'If it is the outfit of one of your items, write "example" beside "serial" in that item: its serial is then the right one.',
        });
    }
  }
}
