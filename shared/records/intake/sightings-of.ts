import { type Sighting, sightingFrom } from "../sighting.ts";
import type { Intake } from "./intake.ts";
import type { References } from "./references-of.ts";
import { sightingRows } from "./sighting-rows.ts";

/** The rows of every log. */
export function sightingsOf(intake: Intake, { variantOf }: References): readonly Sighting[] {
  const sightings: Sighting[] = [];
  const validate = intake.validator.of("sighting");
  for (const row of sightingRows(intake)) {
    const variant = variantOf(row);
    const document = intake.fittingOfVariant(row, validate);
    const sighting = sightingFrom(document);
    sightings.push(sighting);
    if (document.leftOut || !variant) intake.unsound.add(sighting);
  }
  return sightings;
}
