import type { PartFinding } from "../../assessments/completeness.ts";

type Units = Pick<
  PartFinding,
  "present" | "substitute" | "unverified" | "absent" | "unexamined" | "notIssued" | "surplus"
>;

/** How many units of a part were found how: "3 present, 1 not examined". */
export function unitWords(units: Units): string {
  const said = [
    [units.present, "present"],
    [units.substitute, "substitute"],
    [units.unverified, "unverified"],
    [units.absent, "absent"],
    [units.unexamined, "not examined"],
    [units.notIssued, "never issued"],
    [units.surplus, "over"],
  ] as const;
  return said
    .filter(([count]) => count > 0)
    .map(([count, word]) => `${count} ${word}`)
    .join(", ");
}
