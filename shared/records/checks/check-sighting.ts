import { suggestion } from "../../diagnostics/nearest-name.ts";
import type { Collection } from "../collection.ts";
import { mayHaveMore } from "../names-left-out.ts";
import type { Report } from "../report.ts";
import type { Sighting } from "../sighting.ts";
import type { Variant } from "../variant.ts";
import { checkNotBefore, checkSerial } from "./check-against-variant.ts";
import { checkSource } from "./check-named.ts";

/** Parts with commas between them, as they should be written. */
function withSemicolons(names: string, { parts }: Variant): string | undefined {
  const each = names.split(",").map((name) => name.trim());
  if (each.length < 2) return undefined;
  return each.every((name) => name === "rest" || parts.has(name))
    ? `Did you mean "${each.join(";")}"?`
    : 'Separate the parts with semicolons, as in "lens;rule".';
}

/** A row of a log against its variant. */
export function checkSighting(collection: Collection, report: Report, sighting: Sighting) {
  const { document } = sighting;
  checkSource(collection, report, document, ["source"], sighting.source);
  const variant = collection.variants.get(sighting.variant);
  if (!variant) return;
  const told = new Set([...sighting.present, ...sighting.absent]);
  for (const column of ["present", "absent"] as const) {
    for (const id of sighting[column]) {
      if (id === "rest" || variant.parts.has(id) || mayHaveMore(variant, "parts")) continue;
      report("unknown-part", document, [column], {
        found: `"${id}"`,
        expected: `a part of "${variant.id}", or "rest"`,
        remedy: withSemicolons(id, variant) ?? suggestion(id, variant.parts.keys(), (part) => told.has(part)),
      });
    }
    for (const id of new Set(sighting[column].filter((each, at, all) => all.indexOf(each) !== at)))
      report("repeated-part", document, [column], { found: `"${id}" twice`, expected: "each part once" });
    const both =
      column === "present" ? sighting.present.find((id) => sighting.absent.includes(id)) : undefined;
    if (both !== undefined) {
      const finding = { found: `"${both}" both present and absent`, expected: "each part in one of the two" };
      report("wrong-value", document, [column], finding);
    }
  }
  checkSerial(report, document, variant, sighting.serial);
  checkNotBefore(report, document, variant, sighting.seen, ["seen"]);
}
