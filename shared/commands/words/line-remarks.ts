import type { PartLine } from "../../records/item.ts";
import { englishBench } from "../../words/en/bench.ts";

/** A line of a part as it is recorded, or as it passes the door. */
type Said = {
  readonly [Field in "model" | "serial" | "condition" | "packed" | "belongs" | "evidence" | "note"]:
    | string
    | null
    | undefined;
} & Pick<PartLine, "marks" | "repairs">;

/** All that a line of the record says of a part beyond its state and how many. */
export const lineRemarks = (line: Said, { remarks: say } = englishBench): string[] =>
  [
    line.model && say.model(line.model),
    line.serial && say.serial(line.serial),
    line.marks.length > 0 && say.marks(line.marks.join(", ")),
    line.condition,
    line.packed && say.packed(line.packed),
    line.repairs.length > 0 && say.repairs(line.repairs.join(", ")),
    line.belongs === "spare" && say.spare,
    line.evidence && say.evidence(line.evidence),
    line.note,
  ].flatMap((remark) => (remark ? [remark] : []));
