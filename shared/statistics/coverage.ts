import { requireFrequencies } from "./sighting-frequencies.ts";

/**
 * Sample coverage: the share of all surviving examples, weighted by how readily each is sighted,
 * that has been sighted at least once.
 * Formula  1 - (f₁/n) · (n - 1)f₁ / ((n - 1)f₁ + 2f₂);
 *          with f₂ = 0: 1 - (f₁/n) · (n - 1)(f₁ - 1) / ((n - 1)(f₁ - 1) + 2)
 * Units    a share, 0 to 1
 * Assumes  n sightings, each of an example drawn at random
 * Edges    f₁ = 0 gives 1, and so does f₁ = 1 with f₂ = 0. f₁ = n: the number is given, but no example was seen
 *          again, and whoever shows it has to say so; or to withhold it, where n = 1 gives 1. n = 0: no estimate.
 * Source   Chao & Jost (2012), Ecology 93: 2533-2547; after Good (1953), Biometrika 40: 237-264
 * Checks   coverage({ sightings: 448, once: 31, twice: 18 }) => 0.930983
 *          coverage({ sightings: 168, once: 12, twice: 4 }) => 0.928855
 * Throws   RangeError unless the counts are whole, sightings at least 1, and once + 2·twice no more than sightings
 */
export function coverage({
  sightings,
  once,
  twice,
}: {
  readonly sightings: number;
  readonly once: number;
  readonly twice: number;
}): number {
  requireFrequencies(sightings, once, twice);
  if (once === 0) return 1;
  const [missing, reached] =
    twice > 0 ? [(sightings - 1) * once, 2 * twice] : [(sightings - 1) * (once - 1), 2];
  return 1 - (once / sightings) * (missing / (missing + reached));
}
