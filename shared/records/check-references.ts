import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { suggestion } from "../diagnostics/nearest-name.ts";
import { type Path, placeIn, type SourceDocument } from "../source/document.ts";
import { checkPlan } from "./check-plan.ts";
import { checkSerials } from "./check-serials.ts";
import type { Collection } from "./collection.ts";
import type { Item } from "./item.ts";
import type { Report } from "./report.ts";
import { numberInRange, rangeOf, rangesInWords, type SerialRange } from "./serial.ts";
import type { Sighting } from "./sighting.ts";
import type { Variant } from "./variant.ts";
import { reportWeakPoints } from "./weak-points.ts";

interface Surroundings {
  readonly beside: ReadonlySet<string>;
  readonly settings: SourceDocument | undefined;
  readonly thereButBroken: ReadonlySet<string>;
  /** How many items there are, those included that have errors. */
  readonly itemFiles: number;
}

/** Records against each other: whatever one of them names must be there, and must make sense where it stands. */
export function checkReferences(collection: Collection, around: Surroundings): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const report: Report = (code, document, path, finding, at) =>
    void diagnostics.push(diagnose(code, placeIn(document, path, at), finding));

  const { scale } = collection.settings;
  if (around.settings) {
    const rarity = [...collection.scales.values()]
      .filter((each) => each.kind === "rarity")
      .map((each) => each.id);
    if (!rarity.includes(scale)) {
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
  for (const variant of collection.variants.values()) checkVariant(collection, around, report, variant);
  const addresses = new Map<string, string>(
    [...collection.items.keys()].map((id) => [id, `the item "${id}"`]),
  );
  for (const item of collection.items.values()) {
    checkItem(collection, around, report, item);
    checkFormerAddresses(addresses, report, item, item.formerly);
  }
  const articleAddresses = new Map([...collection.articles.keys()].map((id) => [id, `the article "${id}"`]));
  for (const article of collection.articles.values()) {
    checkFormerAddresses(articleAddresses, report, article, article.formerly);
  }
  for (const sighting of collection.sightings) checkSighting(collection, report, sighting);
  checkSerials(collection, report);
  reportWeakPoints(collection, report);
  return diagnostics;
}

function checkSource(
  collection: Collection,
  report: Report,
  document: SourceDocument,
  path: Path,
  id: string | undefined,
) {
  if (id === undefined || collection.sources.has(id)) return;
  report("unknown-source", document, path, {
    found: `"${id}"`,
    expected: "the id of a source in content/sources.yaml",
    remedy: suggestion(id, collection.sources.keys()),
  });
}

function checkFormerAddresses(
  taken: Map<string, string>,
  report: Report,
  record: { id: string; document: SourceDocument },
  formerly: readonly string[],
) {
  for (const [at, id] of formerly.entries()) {
    const holder = taken.get(id);
    if (holder) {
      report("duplicate-id", record.document, ["formerly", at], {
        found: `"${id}", which leads to ${holder}`,
        expected: "an address that nothing else has",
      });
    } else taken.set(id, `"${record.id}"`);
  }
}

function checkRanges(
  collection: Collection,
  report: Report,
  document: SourceDocument,
  path: Path,
  ranges: readonly SerialRange[],
) {
  for (const [at, range] of ranges.entries()) {
    checkSource(collection, report, document, [...path, at, "source"], range.source);
    if (range.from !== undefined && range.to !== undefined && range.to < range.from) {
      report("range-reversed", document, [...path, at, "to"], {
        found: `a range from ${range.from} to ${range.to}`,
        expected: "an end that is not before the beginning",
      });
    }
  }
}

function checkVariant(collection: Collection, around: Surroundings, report: Report, variant: Variant) {
  const { document } = variant;
  const raw = document.data as Record<string, unknown>;
  // What a variant has from another is checked, and reported, where it was written.
  const own = (field: string, key?: string): boolean => {
    const value = raw[field];
    if (key === undefined) return value !== undefined && value !== null;
    return typeof value === "object" && value !== null && Object.hasOwn(value, key);
  };
  if (variant.extends !== undefined) {
    const base = collection.variants.has(variant.extends) || around.thereButBroken.has(variant.extends);
    if (!base) {
      report("unknown-variant", document, ["extends"], {
        found: `"${variant.extends}"`,
        expected: "the id of another variant reference",
        remedy: suggestion(variant.extends, collection.variants.keys()),
      });
    }
  }
  const family = collection.families.get(variant.family);
  if (!family) {
    const finding = { found: "no family.yaml beside this variant", expected: "one, with at least a name" };
    report("missing-file", document, [], finding);
  }
  if (own("made") && variant.made) {
    checkSource(collection, report, document, ["made", "source"], variant.made.source);
    if (variant.made.source === undefined) {
      const finding = { found: "a number made without a source", expected: "an id of the bibliography" };
      report("source-missing", document, ["made"], finding, "key");
    }
    if (variant.made.high < variant.made.low) {
      const finding = {
        found: `${variant.made.low} to ${variant.made.high}`,
        expected: "a high that is not below the low",
      };
      report("range-reversed", document, ["made", "high"], finding);
    }
  }
  if (own("serials")) {
    checkRanges(collection, report, document, ["serials"], variant.serials);
    for (const [at, range] of variant.serials.entries()) {
      if (range.source !== undefined) continue;
      const finding = { found: "a range of serials without a source", expected: "an id of the bibliography" };
      report("source-missing", document, ["serials", at], finding);
    }
  }
  for (const [at, id] of variant.sources.entries()) {
    if (own("sources")) checkSource(collection, report, document, ["sources", at], id);
  }
  for (const [id, values] of variant.features) {
    if (!family || !own("features", id)) continue;
    const feature = family.features.get(id);
    if (!feature) {
      report(
        "unknown-feature",
        document,
        ["features", id],
        {
          found: `"${id}"`,
          expected: "a feature that family.yaml declares",
          remedy: suggestion(id, family.features.keys()),
        },
        "key",
      );
      continue;
    }
    for (const value of values) {
      if (feature.values.includes(value)) continue;
      report("wrong-value", document, ["features", id], {
        found: `"${value}"`,
        expected: "a value that family.yaml declares for it",
        remedy: suggestion(value, feature.values),
      });
    }
  }
  checkPlan(variant, report, (id) => own("parts", id));
  const groups = new Set([...variant.parts.values()].map((part) => part.group));
  for (const [id, part] of variant.parts) {
    if (!own("parts", id)) continue;
    checkRanges(collection, report, document, ["parts", id, "serials"], part.serials);
    const unknown = part.marks.flatMap((mark) => /\{(?!set\})[^{}]*\}/.exec(mark)?.[0] ?? [])[0];
    if (unknown !== undefined) {
      const finding = {
        found: `"${unknown}" in a mark`,
        expected: '"{set}", the number of the set, or what is written',
      };
      report("wrong-value", document, ["parts", id, "marks"], finding);
    }
    for (const [at, hazard] of part.hazards.entries()) {
      checkHazard(collection, report, document, ["parts", id, "hazards", at], hazard);
    }
  }
  if (!own("levels")) return;
  const seen = new Set<string>();
  for (const [at, level] of variant.levels.entries()) {
    if (seen.has(level.id)) {
      report("duplicate-id", document, ["levels", at, "id"], {
        found: `"${level.id}" twice`,
        expected: "each level once",
      });
    }
    seen.add(level.id);
    for (const [index, id] of level.needs.parts.entries()) {
      if (variant.parts.has(id)) continue;
      report("unknown-part", document, ["levels", at, "needs", "parts", index], {
        found: `"${id}"`,
        expected: "a part of this variant",
        remedy: suggestion(id, variant.parts.keys()),
      });
    }
    for (const [index, id] of level.needs.groups.entries()) {
      if (groups.has(id)) continue;
      report("wrong-value", document, ["levels", at, "needs", "groups", index], {
        found: `"${id}"`,
        expected: "a group that some part of this variant is in",
        remedy: suggestion(
          id,
          [...groups].filter((each) => each !== undefined),
        ),
      });
    }
  }
}

function checkHazard(
  collection: Collection,
  report: Report,
  document: SourceDocument,
  path: Path,
  id: string,
) {
  if (collection.hazards.has(id)) return;
  report("unknown-hazard", document, path, {
    found: `"${id}"`,
    expected: "a hazard of the register",
    remedy: suggestion(id, collection.hazards.keys()),
  });
}

function checkItem(collection: Collection, around: Surroundings, report: Report, item: Item) {
  const { document } = item;
  for (const [at, event] of item.provenance.entries()) {
    checkSource(collection, report, document, ["provenance", at, "source"], event.source);
  }
  for (const [at, extra] of item.extras.entries()) {
    for (const [index, hazard] of extra.hazards.entries()) {
      checkHazard(collection, report, document, ["extras", at, "hazards", index], hazard);
    }
  }
  const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
  const beside = (path: Path, file: string | undefined) => {
    if (file === undefined || around.beside.has(`${folder}${file.replace(/^\.\//, "")}`)) return;
    const leaves = file.startsWith("/") || file.split(/[\\/]/).includes("..");
    report(leaves ? "outside-root" : "missing-file", document, path, {
      found: `"${file}"`,
      expected: leaves ? "a file beside the item" : "a file of this name beside the item",
      remedy: suggestion(
        file,
        [...around.beside].filter((each) => each.startsWith(folder)).map((each) => each.slice(folder.length)),
      ),
    });
  };
  for (const [at, photo] of item.photos.entries()) beside(["photos", at, "file"], photo.file);
  beside(["video", "src"], item.video?.src);
  beside(["video", "captions"], item.video?.captions);

  const variant = collection.variants.get(item.variant);
  if (!variant) return;
  if (item.serial !== undefined) {
    if (variant.serials.length > 0 && !rangeOf(variant.serials, item.serial)) {
      report("serial-out-of-range", document, ["serial"], {
        found: `"${item.serial}"`,
        expected: `a serial within the ranges of "${variant.id}": ${rangesInWords(variant.serials)}`,
      });
    }
  }
  for (const [id, lines] of item.parts) {
    const part = variant.parts.get(id);
    if (!part) continue;
    const units =
      lines.length === 1
        ? (lines[0]?.quantity ?? part.quantity)
        : lines.reduce((sum, line) => sum + (line.quantity ?? 1), 0);
    // A unit said to be spare is meant to be more than the case needs.
    if (units > part.quantity && !lines.some(({ belongs }) => belongs === "spare")) {
      report(
        "too-many-units",
        document,
        ["parts", id],
        { found: `${units} units`, expected: `at most ${part.quantity}` },
        "key",
      );
    }
  }
}

function checkSighting(collection: Collection, report: Report, sighting: Sighting) {
  const { document } = sighting;
  const variant = collection.variants.get(sighting.variant);
  if (!variant) return;
  checkSource(collection, report, document, ["source"], sighting.source);
  for (const column of ["present", "absent"] as const) {
    for (const id of sighting[column]) {
      if (id === "rest" || variant.parts.has(id)) continue;
      report("unknown-part", document, [column], {
        found: `"${id}"`,
        expected: `a part of "${variant.id}", or "rest"`,
        remedy: suggestion(id, variant.parts.keys()),
      });
    }
    const both =
      column === "present" ? sighting.present.find((id) => sighting.absent.includes(id)) : undefined;
    if (both !== undefined) {
      const finding = { found: `"${both}" both present and absent`, expected: "each part in one of the two" };
      report("wrong-value", document, [column], finding);
    }
  }
  if (
    sighting.serial !== undefined &&
    variant.serials.length > 0 &&
    !variant.serials.some((range) => numberInRange(range, sighting.serial ?? "") !== undefined)
  ) {
    report("serial-out-of-range", document, ["serial"], {
      found: `"${sighting.serial}"`,
      expected: `a serial within the ranges of "${variant.id}": ${rangesInWords(variant.serials)}`,
    });
  }
  const { issued } = variant;
  if (issued?.earliest !== undefined && issued.earliest !== null && sighting.seen.latest !== null) {
    if (sighting.seen.latest < issued.earliest) {
      report("sighting-before-made", document, ["seen"], {
        found: `"${sighting.seen.text}"`,
        expected: `a date not before "${issued.text}", when the variant was first issued`,
      });
    }
  }
}
