import { findPart } from "../../../assessments/completeness.ts";
import type { Part } from "../../../records/variant.ts";
import { partLine } from "../../../records/written-item.ts";
import type { State } from "../../../terms/states.ts";
import type { BenchWords } from "../../../words/en/bench.ts";
import { unitWords } from "../../words/unit-words.ts";
import { type AskedPart, shownValue } from "./submitted-changes.ts";

/** What one reads on a thing that is there; of one that is gone it is told that the record has it still. */
const readOnIt = ["serial", "marks", "condition", "packed", "repairs"] as const;

/**
 * What is said when a part is saved, which is sound by then. A count, and what was read on a thing, stay when its state
 * changes; whoever tapped should know what the record says by that.
 */
export function savedWords(part: Part, { before, after }: AskedPart, words: BenchWords): string {
  const { saved: say } = words;
  const changed =
    before.length === after.length ? after.filter(({ state }, at) => state !== before[at]?.state) : [];
  const isCounted = changed.some(({ quantity, rest }) => quantity !== undefined || rest !== undefined);
  const still = changed
    .filter(({ state }) => state === "absent" || state === "not-issued")
    .flatMap((line) =>
      readOnIt.flatMap((field) =>
        line[field] === undefined ? [] : [say.field(field, shownValue(line[field]))],
      ),
    );
  const found = findPart(
    part,
    after.map((line) => partLine({ ...line, state: line.state as State })),
  );
  return [
    say.saved,
    ...(isCounted ? [say.now(part.quantity, unitWords(found, words))] : []),
    ...(still.length > 0 ? [say.still(still.join("; "))] : []),
  ].join(" ");
}
