import { requireCount } from "./require-number.ts";

/**
 * The conditions that the counts of a sighting log meet by their nature: examples seen once take one
 * sighting each, examples seen twice take two.
 *
 * Throws  RangeError where they do not
 */
export function requireFrequencies(sightings: number, once: number, twice: number): void {
  requireCount("sightings", sightings, 1);
  requireCount("once", once, 0, sightings);
  requireCount("twice", twice, 0, Math.floor((sightings - once) / 2));
}
