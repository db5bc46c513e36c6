import { grouping } from "../../lists/grouping.ts";
import { isLeftOut } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import type { Report } from "../report.ts";
import { isReversed, overlap, rangesInWords, type SerialRange } from "../serial.ts";
import type { Variant } from "../variant.ts";

/** Ranges that are written in its own reference: what it has from another is that one's. */
function ownRanges({ document, serials }: Variant): (readonly [number, SerialRange])[] {
  const { serials: written } = document.data as { readonly serials?: unknown };
  return written === undefined || written === null
    ? []
    : [...serials.entries()].filter(
        ([at, range]) => !range.skipped && !isReversed(range) && !isLeftOut(document, "serials", at),
      );
}

/**
 * Variants of one family that claim the same serials: the works may have numbered both in one run, but it may be a slip
 * as well. One that extends the other may be a part of its run. Told once a variant, at its first such range.
 */
export function checkSharedSerials({ variants }: Collection, report: Report): void {
  for (const family of grouping(variants.values(), (each) => each.family).values()) {
    const ranges = new Map(family.map((variant) => [variant, ownRanges(variant)]));
    for (const [place, variant] of family.entries()) {
      const before = family
        .slice(0, place)
        .filter((other) => other.extends !== variant.id && variant.extends !== other.id);
      for (const [at, range] of ranges.get(variant) ?? []) {
        const sharing = before.filter((other) => ranges.get(other)?.some(([, each]) => overlap(each, range)));
        if (sharing.length === 0) continue;
        report("shared-serials", variant.document, ["serials", at], {
          found: `${rangesInWords([range])}, some of which ${sharing.map(({ id }) => `"${id}"`).join(", ")} ${sharing.length > 1 ? "have" : "has"} too`,
          expected: "serials that no other variant of the family has",
          remedy: "Where they were numbered in one run, only features tell them apart.",
        });
        break;
      }
    }
  }
}
