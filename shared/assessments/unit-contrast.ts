import type { Bounds } from "./completeness.ts";

/** What is known of one part of one example, as far as two examples are told apart by it. */
export interface ComparedUnits {
  readonly present: number;
  readonly substitute: number;
  readonly unverified: number;
  readonly absent: number;
  readonly unexamined: number;
  readonly notIssued: number;
  /** The certain and the possible share; null where the example was never issued the part. */
  readonly share: Bounds | null;
  /** Models of the substitutes. */
  readonly models: readonly string[];
  /** Whether its marks agree with the set, and its serial with the time of issue; null where that says nothing. */
  readonly marks: string | null;
  readonly dating: string | null;
}

/** `unknown`: what is recorded of one or the other does not reach to tell them apart. */
export type Contrast = "differs" | "unknown" | "alike";

const states = ["present", "substitute", "unverified", "absent", "notIssued"] as const;

const isKnown = (units: ComparedUnits): boolean => units.unexamined === 0;

const signature = (units: ComparedUnits): string =>
  JSON.stringify([
    ...states.map((state) => units[state]),
    [...units.models].sort(),
    units.marks,
    units.dating,
  ]);

/** A share that is more than another, whatever was not examined. */
const isMore = (first: Bounds, second: Bounds): boolean => first.low > second.high;

/**
 * Whether a part tells two or more examples apart: by the state of its units, the model of a substitute, whether its
 * marks agree and how it is dated. Units that nobody examined are no difference, unless the shares that are certain
 * and possible cannot be the same. Null stands for an example whose variant has no such part.
 */
export function contrastUnits(examples: readonly (ComparedUnits | null)[]): Contrast {
  const some = examples.filter((units) => units !== null);
  if (some.length === 0) return "alike";
  if (some.length < examples.length) return "differs";
  const known = some.filter(isKnown);
  if (new Set(known.map(signature)).size > 1) return "differs";
  const shares = some.flatMap(({ share }) => share ?? []);
  if (shares.some((first) => shares.some((second) => isMore(first, second)))) return "differs";
  return known.length === some.length ? "alike" : "unknown";
}

/** The same for a feature: its values as observed, null where it was not looked at. */
export function contrastValues(values: readonly (string | null)[]): Contrast {
  const known = values.filter((value) => value !== null);
  if (new Set(known).size > 1) return "differs";
  return known.length === values.length ? "alike" : "unknown";
}
