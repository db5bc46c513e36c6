import type { HazardFinding } from "../assessments/hazards.ts";
import { inLanguage } from "./in-language.ts";
import type { PublishedHazard } from "./published.ts";

export function publishHazard({ hazard, parts, extras }: HazardFinding, language: string): PublishedHazard {
  const own = inLanguage(hazard.translated, language);
  return {
    id: hazard.id,
    name: own?.name ?? hazard.name,
    parts,
    extras,
    caution: own?.caution ?? hazard.caution,
    source: hazard.source,
    url: hazard.url ?? null,
  };
}
