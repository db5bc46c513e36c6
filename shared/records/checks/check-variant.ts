import { suggestion } from "../../diagnostics/nearest-name.ts";
import { isLeftOut, type Path, type SourceDocument } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import { mayHaveMore } from "../names-left-out.ts";
import { neededBy } from "../needed-parts.ts";
import type { Report } from "../report.ts";
import { isReversed, overlap, rangesInWords, type SerialRange } from "../serial.ts";
import type { Variant } from "../variant.ts";
import { checkHazard, checkSource } from "./check-named.ts";
import { checkPlan } from "./check-plan.ts";

function checkRanges(
  collection: Collection,
  report: Report,
  document: SourceDocument,
  path: Path,
  ranges: readonly SerialRange[],
) {
  for (const [at, range] of ranges.entries()) {
    checkSource(collection, report, document, [...path, at, "source"], range.source);
    if (isReversed(range)) {
      report("range-reversed", document, [...path, at, "to"], {
        found: `a range from ${range.from} to ${range.to}`,
        expected: "an end that is not before the beginning",
      });
    }
  }
}

/** A number in two ranges would be counted, or dated, twice; numbers that were left unused lie within others. */
function checkOverlaps(report: Report, document: SourceDocument, path: Path, ranges: readonly SerialRange[]) {
  const counted = [...ranges.entries()].filter(
    ([at, range]) => !range.skipped && !isReversed(range) && !isLeftOut(document, ...path, at),
  );
  for (const [place, [at, range]] of counted.entries()) {
    const [, other] = counted.slice(0, place).find(([, each]) => overlap(each, range)) ?? [];
    if (!other) continue;
    report("range-overlap", document, [...path, at], {
      found: `${rangesInWords([range])}, which overlaps ${rangesInWords([other])}`,
      expected: "each number in one range only",
    });
  }
}

/** A variant reference against its family, unless that cannot be read, and against itself. */
export function checkVariant(
  collection: Collection,
  report: Report,
  variant: Variant,
  isFamilyUnread: boolean,
) {
  const { document } = variant;
  const raw = document.data as Record<string, unknown>;
  // What a variant has from another is checked, and reported, where it was written.
  const own = (field: string, key?: string): boolean => {
    const value = raw[field];
    if (key === undefined) return value !== undefined && value !== null;
    return typeof value === "object" && value !== null && Object.hasOwn(value, key);
  };
  const hasOwnSerials = (part: string): boolean =>
    Object.hasOwn((raw.parts as Record<string, object>)[part] ?? {}, "serials");
  const family = collection.families.get(variant.family);
  if (!family && !isFamilyUnread) {
    const finding = { found: "no family.yaml beside this variant", expected: "one, with at least a name" };
    report("missing-file", document, [], finding);
  }
  if (own("made") && variant.made) {
    checkSource(collection, report, document, ["made", "source"], variant.made.source);
    if (variant.made.source === undefined) {
      const finding = {
        found: "a number made without a source",
        expected: "the id of a source in content/sources.yaml",
      };
      report("source-missing", document, ["made"], finding, "key");
    }
    if (variant.made.high < variant.made.low) {
      const finding = {
        found: `${variant.made.low} to ${variant.made.high}`,
        expected: 'a "high" that is not below "low"',
      };
      report("range-reversed", document, ["made", "high"], finding);
    }
  }
  if (own("serials")) {
    checkRanges(collection, report, document, ["serials"], variant.serials);
    checkOverlaps(report, document, ["serials"], variant.serials);
    for (const [at, range] of variant.serials.entries()) {
      if (range.source !== undefined) continue;
      const finding = {
        found: "a range of serials without a source",
        expected: "the id of a source in content/sources.yaml",
      };
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
      if (mayHaveMore(family.document, "features")) continue;
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
      if (feature.values.includes(value) || isLeftOut(family.document, "features", id)) continue;
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
    if (hasOwnSerials(id)) {
      checkRanges(collection, report, document, ["parts", id, "serials"], part.serials);
      checkOverlaps(report, document, ["parts", id, "serials"], part.serials);
    }
    const named = family?.groups ?? new Map();
    // Where a family names none, its groups are called by their ids.
    const isUnnamed = part.group !== undefined && named.size > 0 && !named.has(part.group);
    if (isUnnamed && !(family && isLeftOut(family.document, "groups"))) {
      report("unnamed-group", document, ["parts", id, "group"], {
        found: `"${part.group}"`,
        expected: "a group that family.yaml names",
        remedy: suggestion(part.group, named.keys()),
      });
    }
    const unknown = part.marks.flatMap((mark) => /\{(?!set\})[^{}]*\}/.exec(mark)?.[0] ?? [])[0];
    if (unknown !== undefined) {
      const finding = {
        found: `"${unknown}" in a mark`,
        expected: '"{set}" for the number of the set, or the mark as it is written',
      };
      report("wrong-value", document, ["parts", id, "marks"], finding);
    }
    for (const [at, hazard] of part.hazards.entries()) {
      checkHazard(collection, report, document, ["parts", id, "hazards", at], hazard);
    }
  }
  if (own("levels")) checkLevels(variant, groups, report);
}

function checkLevels(variant: Variant, groups: ReadonlySet<string | undefined>, report: Report) {
  const { document } = variant;
  const seen = new Set<string>();
  const isOfUnknownParts = mayHaveMore(variant, "parts");
  const isOfUnknownGroups = isLeftOut(variant, "parts");
  for (const [at, level] of variant.levels.entries()) {
    const unknownParts = level.needs.parts.some((id) => !variant.parts.has(id));
    const unknownGroups = level.needs.groups.some((id) => !groups.has(id));
    // Of a need that is not known another message tells.
    if (
      !unknownParts &&
      !unknownGroups &&
      !isOfUnknownGroups &&
      neededBy(level, variant.parts).length === 0
    ) {
      report("wrong-value", document, ["levels", at, "needs"], {
        found: "a level that needs no part of this variant, so that any outfit would reach it",
        expected: "a standing, part or group of which the variant has some part",
      });
    }
    if (seen.has(level.id)) {
      report("duplicate-id", document, ["levels", at, "id"], {
        found: `"${level.id}" twice`,
        expected: "each level once",
      });
    }
    seen.add(level.id);
    for (const [index, id] of level.needs.parts.entries()) {
      if (isOfUnknownParts || variant.parts.has(id)) continue;
      report("unknown-part", document, ["levels", at, "needs", "parts", index], {
        found: `"${id}"`,
        expected: "a part of this variant",
        remedy: suggestion(id, variant.parts.keys()),
      });
    }
    for (const [index, id] of level.needs.groups.entries()) {
      if (isOfUnknownGroups || groups.has(id)) continue;
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
