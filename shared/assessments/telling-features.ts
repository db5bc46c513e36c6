import type { Feature } from "../records/family.ts";
import type { Variant } from "../records/variant.ts";
import { expectedEntropy } from "../statistics/expected-entropy.ts";

/** Sums of the same shares in another order differ by less than this. */
const rounding = 1e-12;

/** The features that can split the variants, the most telling first: by expected entropy, then effort, then id. */
export function tellingFeatures(variants: readonly Variant[], features: readonly Feature[]): Feature[] {
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
        (Math.abs(a.entropy - b.entropy) > rounding ? a.entropy - b.entropy : 0) ||
        a.feature.effort - b.feature.effort ||
        (a.feature.id < b.feature.id ? -1 : 1),
    )
    .map(({ feature }) => feature);
}
