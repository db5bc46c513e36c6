import type { PartSummary } from "../publication/published.ts";

/** As much of a published part as its compartment shows; without `summary` it is the plan of what was issued. */
export interface CasePlanPart {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly weight: number;
  /** Left, top, width, height, in any one unit. */
  readonly plan: readonly [number, number, number, number] | null;
  readonly summary?: PartSummary;
  /** How many of the part are there: how far a compartment that is partly filled is. */
  readonly units?: { readonly expected: number; readonly present: number };
}

/**
 * How much of the compartment is filled, by units that are there and right beside others that are not; half where nobody has
 * counted. Null where all of it is in one state.
 */
export function filledShare({ summary, units }: Pick<CasePlanPart, "summary" | "units">): number | null {
  const share = units && units.expected > 0 ? Math.min(1, Math.max(0, units.present / units.expected)) : null;
  if (summary === "incomplete" || summary === "partly-examined") return share ?? 0.5;
  return (summary === "substitute" || summary === "unverified") && share ? share : null;
}
