import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import type { Collection } from "../records/collection.ts";
import { placeIn } from "../source/document.ts";
import type { Assessments } from "./assess-collection.ts";

/** What an assessment found that its author should look at again. Nothing of it stops a build. */
export function concernsOf(collection: Collection, assessments: Assessments): Diagnostic[] {
  const concerns: Diagnostic[] = [];
  for (const item of collection.items.values()) {
    const assessment = assessments.items.get(item.id);
    if (!assessment) continue;
    const { identification, dating } = assessment;
    const claimed = identification.candidates.filter(({ variant }) => variant === item.variant);
    for (const id of claimed.flatMap(({ contradictions }) => contradictions)) {
      // A serial outside of every range has been reported where the records were checked.
      if (id === "serial") continue;
      const values = collection.variants.get(item.variant)?.features.get(id) ?? [];
      concerns.push(
        diagnose("feature-contradicts", placeIn(item.document, ["features", id]), {
          found: `"${item.features.get(id)}"`,
          expected: `${values.map((value) => `"${value}"`).join(" or ")}, as "${item.variant}" is found with`,
        }),
      );
    }
    // A case that was fitted out anew has one history, and one message, however many parts tell of it.
    const later = [...dating.parts].flatMap(([id, units]) => {
      const unit = units.find(({ verdict }) => verdict === "later");
      return unit ? [{ id, made: unit.made }] : [];
    });
    const [first, ...more] = later;
    if (!first) continue;
    concerns.push(
      diagnose("part-later-than-issue", placeIn(item.document, ["parts", first.id], "key"), {
        found:
          more.length === 0
            ? `a part made ${first.made}`
            : `parts made later: ${later.map(({ id, made }) => `"${id}" (${made})`).join(", ")}`,
        expected: `${more.length === 0 ? "one" : "parts"} made no later than the issue of the variant, ${dating.issued}`,
      }),
    );
  }
  return concerns;
}
