import { type Sighting, sightingFrom } from "../sighting.ts";
import type { Intake } from "./intake.ts";
import type { References } from "./references-of.ts";
import { sightingRows } from "./sighting-rows.ts";

/** The sightings that are sound, and of a variant that is. */
export function sightingsOf(intake: Intake, { variantOf }: References): readonly Sighting[] {
  const sightings: Sighting[] = [];
  const validate = intake.validator.of("sighting");
  for (const document of sightingRows(intake)) {
    const variant = variantOf(document);
    if (intake.isSoundOfVariant(document, validate) && variant) sightings.push(sightingFrom(document));
  }
  return sightings;
}
