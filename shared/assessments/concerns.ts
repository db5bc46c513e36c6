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
    for (const [id, units] of dating.parts) {
      const later = units.find(({ verdict }) => verdict === "later");
      if (!later) continue;
      concerns.push(
        diagnose("part-later-than-issue", placeIn(item.document, ["parts", id], "key"), {
          found: `a part made ${later.made}`,
          expected: `one made no later than the issue of the variant, ${dating.issued}`,
        }),
      );
    }
  }
  return concerns;
}
