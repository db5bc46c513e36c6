import type { HazardFinding } from "../assessments/hazards.ts";
import type { Hazard } from "../records/register.ts";
import { inLanguage } from "./in-language.ts";
import type { Redact } from "./masking.ts";
import type { PublishedHazard } from "./published.ts";

/** A hazard in a language, as far as the register has it there, and else in that of the register. */
export function hazardIn(
  { name, caution, translated }: Hazard,
  language: string,
): { readonly name: string; readonly caution: string; readonly isTranslated: boolean } {
  const own = inLanguage(translated, language);
  return {
    name: own?.name ?? name,
    caution: own?.caution ?? caution,
    isTranslated: own?.name !== undefined && own.caution !== undefined,
  };
}

export function publishHazard(
  { hazard, parts, extras }: HazardFinding,
  language: string,
  redact: Redact,
): PublishedHazard {
  const { name, caution } = hazardIn(hazard, language);
  return {
    id: hazard.id,
    name: redact(name),
    parts,
    extras,
    caution: redact(caution),
    source: redact(hazard.source),
    url: hazard.url ?? null,
  };
}
