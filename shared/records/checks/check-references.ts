import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import { suggestion } from "../../diagnostics/nearest-name.ts";
import type { FileKind } from "../../source/collection-files.ts";
import { isLeftOut, placeIn, type SourceDocument } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import type { Report } from "../report.ts";
import { checkUpdated } from "../revision.ts";
import { checkExamples } from "./check-examples.ts";
import { checkItem } from "./check-item.ts";
import { checkSource } from "./check-named.ts";
import { checkPrivate } from "./check-private.ts";
import { checkRepeats } from "./check-repeats.ts";
import { checkSerials } from "./check-serials.ts";
import { checkSharedSerials } from "./check-shared-serials.ts";
import { checkSighting } from "./check-sighting.ts";
import { checkSurnames } from "./check-surnames.ts";
import { checkVariant } from "./check-variant.ts";
import { checkWatching } from "./check-watching.ts";
import { reportWeakPoints } from "./weak-points.ts";

interface CheckContext {
  readonly beside: ReadonlySet<string>;
  readonly settings: SourceDocument | undefined;
  /** How many items there are, those included that have errors. */
  readonly itemFiles: number;
  /** Whether there is a record of an id that cannot be read. */
  readonly isUnread: (kind: FileKind, id: string) => boolean;
}

/**
 * Checks records against each other: whatever one of them names must exist, and must make sense there. Where
 * something was left out of a record, nothing more is reported.
 */
export function checkReferences(collection: Collection, around: CheckContext): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const report: Report = (code, document, path, finding, at) => {
    if (isLeftOut(document, ...path) && path.length > 0) return;
    diagnostics.push(diagnose(code, placeIn(document, path, at), finding));
  };

  const { scale } = collection.settings;
  if (around.settings) {
    checkWatching(collection, report, around.settings);
    const rarity = [...collection.scales.values()]
      .filter((each) => each.kind === "rarity")
      .map((each) => each.id);
    if (!rarity.includes(scale) && !around.isUnread("scale", scale)) {
      const finding = {
        found: `"${scale}"`,
        expected: "the id of a rarity scale",
        remedy: suggestion(scale, rarity),
      };
      report("unknown-scale", around.settings, ["scale"], finding);
    }
  }
  if (around.itemFiles === 0 && around.settings) {
    report("empty-collection", around.settings, [], {
      found: "no item",
      expected: "at least one below content/items/",
    });
  }
  for (const family of collection.families.values()) {
    for (const [at, id] of family.sources.entries())
      checkSource(collection, report, family.document, ["sources", at], id);
  }
  for (const variant of collection.variants.values())
    checkVariant(collection, report, variant, around.isUnread("family", variant.family));
  checkSharedSerials(collection, report);
  for (const item of collection.items.values()) {
    checkItem(collection, around.beside, report, item);
    diagnostics.push(...checkPrivate(item));
    checkUpdated(report, item);
  }
  for (const article of collection.articles.values()) checkUpdated(report, article);
  checkFormerAddresses("item", collection.items, report);
  checkFormerAddresses("variant", collection.variants, report);
  checkFormerAddresses("family", collection.families, report);
  checkFormerAddresses("article", collection.articles, report);
  for (const sighting of collection.sightings) checkSighting(collection, report, sighting);
  diagnostics.push(...checkSurnames(collection));
  checkSerials(collection, report);
  checkExamples(collection, report);
  checkRepeats(collection.sightings, report);
  reportWeakPoints(collection, report);
  return diagnostics;
}

interface Moved {
  readonly id: string;
  readonly formerly: readonly string[];
  readonly document: SourceDocument;
}

function checkFormerAddresses(kind: string, records: ReadonlyMap<string, Moved>, report: Report) {
  const taken = new Map([...records.keys()].map((id) => [id, `the ${kind} "${id}"`]));
  for (const { id, formerly, document } of records.values()) {
    for (const [at, former] of formerly.entries()) {
      const holder = taken.get(former);
      if (holder) {
        report("duplicate-id", document, ["formerly", at], {
          found: `"${former}", which leads to ${holder}`,
          expected: "an address that nothing else claims",
        });
      } else taken.set(former, `"${id}"`);
    }
  }
}
