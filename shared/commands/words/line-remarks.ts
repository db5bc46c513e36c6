import type { PartLine } from "../../records/item.ts";

/** A line of a part as it is recorded, or as it passes the door. */
type Said = {
  readonly [Field in "model" | "serial" | "condition" | "packed" | "belongs" | "evidence" | "note"]:
    | string
    | null
    | undefined;
} & Pick<PartLine, "marks" | "repairs">;

/** All that a line of the record says of a part beyond its state and how many. */
export const lineRemarks = (line: Said): string[] =>
  [
    line.model && `model ${line.model}`,
    line.serial && `serial ${line.serial}`,
    line.marks.length > 0 && `marked ${line.marks.join(", ")}`,
    line.condition,
    line.packed && `packed: ${line.packed}`,
    line.repairs.length > 0 && `repairs: ${line.repairs.join(", ")}`,
    line.belongs === "spare" && "spare",
    line.evidence && `by ${line.evidence}`,
    line.note,
  ].flatMap((remark) => (remark ? [remark] : []));
