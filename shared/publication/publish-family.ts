import type { FamilyAssessment } from "../assessments/assess-collection.ts";
import type { Family } from "../records/family.ts";
import type { Redact } from "./masking.ts";
import { publishRevisions } from "./publish-revisions.ts";
import type { Shown } from "./publish-variant.ts";
import type { PublishedFamily, PublishedVariant } from "./published.ts";

export const publishFamily = (
  family: Family,
  { comparison, key }: FamilyAssessment,
  variants: readonly PublishedVariant[],
  shown: Shown,
  free: Redact,
): PublishedFamily => ({
  id: family.id,
  name: family.name,
  maker: family.maker ?? null,
  description: shown(family.description),
  features: [...family.features.values()].map(({ id, name, values, look, effort, note }) => ({
    id,
    name,
    values,
    look: shown(look),
    effort,
    note: shown(note),
  })),
  variants: variants.map(({ id, name }) => ({ id, name })),
  comparison: comparison.rows.map((row) => ({ ...row, name: free(row.name) })),
  key,
  sources: family.sources,
  formerly: family.formerly,
  revisions: publishRevisions(family.revisions, free),
});
