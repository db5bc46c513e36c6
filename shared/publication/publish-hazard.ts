import type { HazardFinding } from "../assessments/hazards.ts";
import type { PublishedHazard } from "./published.ts";

export const publishHazard = ({ hazard, parts, extras }: HazardFinding): PublishedHazard => ({
  id: hazard.id,
  name: hazard.name,
  parts,
  extras,
  caution: hazard.caution,
  source: hazard.source,
  url: hazard.url ?? null,
});
