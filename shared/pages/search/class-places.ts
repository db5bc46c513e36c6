import type { PublishedVariant } from "../../publication/published.ts";

/** The classes that the interval spans, on a scale whose classes stand in order. */
export function classPlaces(variant: PublishedVariant, scale: readonly { readonly id: string }[]): number[] {
  const { low = null, high = null } = variant.rarity.class ?? {};
  const ends = [low, high].map((id) => scale.findIndex((each) => each.id === id)).filter((at) => at >= 0);
  if (ends.length === 0) return [];
  const [first, last] = [Math.min(...ends), Math.max(...ends)];
  return Array.from({ length: last - first + 1 }, (_, at) => first + at);
}
