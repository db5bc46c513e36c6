import type { PartFinding } from "../../assessments/completeness.ts";
import { type BenchWords, englishBench } from "../../words/en/bench.ts";

type Units = Pick<
  PartFinding,
  "present" | "substitute" | "unverified" | "absent" | "unexamined" | "notIssued" | "surplus"
>;

/** How many units of a part were found how: "3 present, 1 not examined". */
export function unitWords(units: Units, { units: say }: BenchWords = englishBench): string {
  const said = [
    [units.present, say.present],
    [units.substitute, say.substitute],
    [units.unverified, say.unverified],
    [units.absent, say.absent],
    [units.unexamined, say.unexamined],
    [units.notIssued, say.notIssued],
    [units.surplus, say.surplus],
  ] as const;
  return said
    .filter(([count]) => count > 0)
    .map(([count, written]) => written(count))
    .join(", ");
}
