import type { Feature } from "../records/family.ts";
import { isLegible, rangeOf } from "../records/serial.ts";
import type { Variant } from "../records/variant.ts";
import type { Verdict } from "../terms/verdicts.ts";
import { type Statement, statement } from "./statement.ts";
import { tellingFeatures } from "./telling-features.ts";
import { areToldBySerial } from "./telling-serials.ts";

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
  /** What is worth looking at next: first "serial" where it would decide by itself, then features, the most telling first. */
  readonly lookNext: readonly string[];
  readonly caveats: readonly Statement[];
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
    if (rangeOf(variant.serials, observed.serial)) agreements.push("serial");
    // What nobody could read in full speaks for no variant, and against none.
    else if (isLegible(observed.serial)) contradictions.push("serial");
  }
  const unobserved = [...features.keys()].filter(
    (id) => variant.features.has(id) && !observed.features.has(id),
  );
  return { variant: variant.id, contradictions, agreements, unobserved };
}

/** Each variant of the family against what was observed: what agrees, what contradicts it, and what was not looked at. */
export function assessIdentification(
  observed: Observed,
  siblings: readonly Variant[],
  features: ReadonlyMap<string, Feature>,
): Identification {
  const isClaimed = ({ id }: Variant) => id === observed.variant;
  const claimedFirst = [...siblings.filter(isClaimed), ...siblings.filter((each) => !isClaimed(each))];
  const candidates = claimedFirst.map((variant) => hold(observed, variant, features));
  const [claimed, ...others] = candidates;
  let verdict: Verdict = "consistent";
  if (!claimed || claimed.contradictions.length > 0) verdict = "contradicted";
  else if (claimed.agreements.length > 0 && others.every((other) => other.contradictions.length > 0)) {
    verdict = "confirmed";
  }
  const lookNext = verdict === "consistent" ? nextToLookAt(observed, claimedFirst, candidates, features) : [];
  return {
    claimed: observed.variant,
    verdict,
    candidates,
    lookNext,
    caveats: caveatsOf(observed, candidates),
  };
}

function caveatsOf({ serial }: Observed, candidates: readonly Candidate[]): Statement[] {
  const [claimed, ...others] = candidates.map(({ agreements }) => agreements.includes("serial"));
  const holding = others.filter((isHeld) => isHeld).length;
  if (claimed && holding > 0) return [statement("serial-shared", { variants: holding + 1 })];
  return serial === undefined || claimed || holding > 0 || isLegible(serial)
    ? []
    : [statement("serial-not-read")];
}

function nextToLookAt(
  observed: Observed,
  variants: readonly Variant[],
  candidates: readonly Candidate[],
  features: ReadonlyMap<string, Feature>,
): readonly string[] {
  const remaining = variants.filter(({ id }) =>
    candidates.some(({ variant, contradictions }) => variant === id && contradictions.length === 0),
  );
  const isSerialNext = observed.serial === undefined && areToldBySerial(remaining);
  const unseen = [...features.values()].filter(({ id }) => !observed.features.has(id));
  return [...(isSerialNext ? ["serial"] : []), ...tellingFeatures(remaining, unseen).map(({ id }) => id)];
}
