import type { Feature } from "../records/family.ts";
import { rangeOf } from "../records/serial.ts";
import type { Variant } from "../records/variant.ts";
import { expectedEntropy } from "../statistics/expected-entropy.ts";

export type Verdict = "confirmed" | "consistent" | "contradicted";

export interface Candidate {
  readonly variant: string;
  /** Ids of features, and "serial". */
  readonly contradictions: readonly string[];
  readonly unobserved: readonly string[];
  readonly agreements: readonly string[];
}

export interface Identification {
  readonly claimed: string;
  readonly verdict: Verdict;
  /** Every variant of the family, the claimed one first. */
  readonly candidates: readonly Candidate[];
  /** Features worth looking at next, the most telling first. */
  readonly lookNext: readonly string[];
}

interface Observed {
  readonly variant: string;
  readonly serial: string | undefined;
  readonly features: ReadonlyMap<string, string>;
}

function hold(observed: Observed, variant: Variant, features: ReadonlyMap<string, Feature>): Candidate {
  const contradictions: string[] = [];
  const agreements: string[] = [];
  for (const [id, value] of observed.features) {
    const values = variant.features.get(id);
    if (values) (values.includes(value) ? agreements : contradictions).push(id);
  }
  if (observed.serial !== undefined && variant.serials.length > 0) {
    (rangeOf(variant.serials, observed.serial) ? agreements : contradictions).push("serial");
  }
  const unobserved = [...features.keys()].filter(
    (id) => variant.features.has(id) && !observed.features.has(id),
  );
  return { variant: variant.id, contradictions, agreements, unobserved };
}

/** Each variant of the family against what was observed: figures.md, section 2. */
export function assessIdentification(
  observed: Observed,
  siblings: readonly Variant[],
  features: ReadonlyMap<string, Feature>,
): Identification {
  const claimedFirst = [...siblings].sort(
    (a, b) => Number(b.id === observed.variant) - Number(a.id === observed.variant),
  );
  const candidates = claimedFirst.map((variant) => hold(observed, variant, features));
  const [claimed, ...others] = candidates;
  const remaining = candidates.filter((candidate) => candidate.contradictions.length === 0);
  let verdict: Verdict = "consistent";
  if (!claimed || claimed.contradictions.length > 0) verdict = "contradicted";
  else if (claimed.agreements.length > 0 && others.every((other) => other.contradictions.length > 0)) {
    verdict = "confirmed";
  }
  const lookNext =
    verdict === "consistent"
      ? rankFeatures(
          claimedFirst.filter((variant) => remaining.some((candidate) => candidate.variant === variant.id)),
          [...features.values()].filter((feature) => !observed.features.has(feature.id)),
        )
      : [];
  return { claimed: observed.variant, verdict, candidates, lookNext };
}

/** The features that split the remaining variants, by expected entropy, then effort, then id. */
function rankFeatures(remaining: readonly Variant[], features: readonly Feature[]): string[] {
  if (remaining.length < 2) return [];
  const now = Math.log2(remaining.length);
  return features
    .map((feature) => ({
      feature,
      // A variant that says nothing of a feature may be found with any of its values.
      entropy: expectedEntropy(
        remaining.map((variant) => variant.features.get(feature.id) ?? feature.values),
      ),
    }))
    .filter(({ entropy }) => entropy < now - 1e-12)
    .sort(
      (a, b) =>
        (Math.abs(a.entropy - b.entropy) > 1e-12 ? a.entropy - b.entropy : 0) ||
        a.feature.effort - b.feature.effort ||
        (a.feature.id < b.feature.id ? -1 : 1),
    )
    .map(({ feature }) => feature.id);
}
