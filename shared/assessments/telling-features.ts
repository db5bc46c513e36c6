import type { Feature } from "../records/family.ts";
import type { Variant } from "../records/variant.ts";
import { expectedEntropy } from "../statistics/expected-entropy.ts";

/** Sums of the same shares in another order differ by less than this. */
const rounding = 1e-12;

/**
 * The features that can split the variants. What is worth looking at next is what tells most: by expected entropy,
 * then effort, then id. With `easiestFirst` effort comes before entropy: of features that will all be asked for in
 * the end, nobody should take the lid apart before a glance has shown that it is needed.
 */
export function tellingFeatures(
  variants: readonly Variant[],
  features: readonly Feature[],
  { easiestFirst = false }: { readonly easiestFirst?: boolean } = {},
): Feature[] {
  if (variants.length < 2) return [];
  const doubt = Math.log2(variants.length);
  return features
    .map((feature) => ({
      feature,
      // A variant that says nothing of a feature may be found with any of its values.
      entropy: expectedEntropy(variants.map((variant) => variant.features.get(feature.id) ?? feature.values)),
    }))
    .filter(({ entropy }) => entropy < doubt - rounding)
    .sort(
      (a, b) =>
        (easiestFirst ? a.feature.effort - b.feature.effort : 0) ||
        (Math.abs(a.entropy - b.entropy) > rounding ? a.entropy - b.entropy : 0) ||
        a.feature.effort - b.feature.effort ||
        (a.feature.id < b.feature.id ? -1 : 1),
    )
    .map(({ feature }) => feature);
}
