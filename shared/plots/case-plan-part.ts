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

/** How much of the compartment is filled; half where nobody has counted. */
export function filledShare({ units }: CasePlanPart): number {
  if (!units || units.expected <= 0) return 0.5;
  return Math.min(1, Math.max(0, units.present / units.expected));
}
