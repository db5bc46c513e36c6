/** The values that a variant is found with; none where nobody knows. */
export type FoundWith = readonly string[];

/**
 * How much doubt remains, on average, once a feature has been looked at: the lower, the better the feature
 * splits the candidates.
 * Formula  Σ over values v of P(v) · H(candidate | v), with H = -Σ p log₂ p and an even prior over the
 *          candidates; a candidate with several values is spread evenly over them
 * Units    bits
 * Assumes  an even prior; of a candidate whose values nobody knows, that it may show any value that the
 *          other candidates show, evenly
 * Edges    one candidate: 0. No candidate: no entropy. No value known of any: log₂ of their number,
 *          nothing is learned. A value named twice counts once.
 * Source   Shannon (1948), A Mathematical Theory of Communication: conditional entropy
 * Checks   expectedEntropy([["silver"], ["silver"], ["platinum"], ["platinum"]]) => 1
 *          expectedEntropy([["silver"], ["platinum"]]) => 0
 *          expectedEntropy([["silver", "platinum"], ["platinum"]]) => 0.688722
 * Throws   RangeError where there is no candidate
 */
export function expectedEntropy(candidates: readonly FoundWith[]): number {
  if (candidates.length === 0) throw new RangeError("Found no candidates; expected at least one.");
  const supports = supportsOf(candidates);
  const values = new Set(supports.flatMap((support) => [...support]));
  if (values.size === 0) return Math.log2(candidates.length);
  let entropy = 0;
  for (const value of values) {
    const joint = supports
      .filter((support) => support.has(value))
      .map((support) => 1 / (support.size * candidates.length));
    const chance = joint.reduce((sum, share) => sum + share, 0);
    for (const share of joint) entropy -= share * Math.log2(share / chance);
  }
  // A feature that settles everything leaves -0 behind.
  return Math.max(0, entropy);
}

function supportsOf(candidates: readonly FoundWith[]): ReadonlySet<string>[] {
  const shown = new Set(candidates.flat());
  return candidates.map((values) => (values.length === 0 ? shown : new Set(values)));
}
