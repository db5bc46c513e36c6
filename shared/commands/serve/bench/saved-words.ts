import type { Part } from "../../../records/variant.ts";
import { choices } from "./part-card.ts";
import { type askedPart, shownValue } from "./submitted-changes.ts";

type Asked = ReturnType<typeof askedPart>;
type Line = Asked["after"][number];

const nameOf = (state: string): string =>
  (choices.find(([value]) => value === state)?.[1] ?? state).toLowerCase();

/** What one reads on a thing that is there; of one that is gone it is told that the record has it still. */
const readOnIt = ["serial", "marks", "condition", "packed", "repairs"] as const;

/** How many units the record speaks for, by their states. */
function units(part: Part, lines: readonly Line[]): string {
  const counts = new Map<string, number>();
  const add = (state: unknown, count: number) => {
    if (count > 0) counts.set(String(state), (counts.get(String(state)) ?? 0) + count);
  };
  let spoken = 0;
  for (const { state, quantity, rest } of lines) {
    const count = Number(quantity ?? (lines.length === 1 ? part.quantity : 1));
    add(state, count);
    spoken += count;
    if (rest === undefined) continue;
    add(rest, part.quantity - spoken);
    spoken = Math.max(spoken, part.quantity);
  }
  add("", part.quantity - spoken);
  return `Of ${part.quantity} now ${[...counts].map(([state, count]) => `${count} ${nameOf(state)}`).join(", ")}.`;
}

/**
 * What is said when a part is saved. A count, and what was read on a thing, stay when its state changes; whoever tapped
 * should know what the record says by that.
 */
export function savedWords(part: Part, { before, after }: Asked): string {
  const changed =
    before.length === after.length ? after.filter(({ state }, at) => state !== before[at]?.state) : [];
  const isCounted = changed.some(({ quantity, rest }) => quantity !== undefined || rest !== undefined);
  const still = changed
    .filter(({ state }) => state === "absent" || state === "not-issued")
    .flatMap((line) =>
      readOnIt.flatMap((field) => (line[field] === undefined ? [] : [`${field} ${shownValue(line[field])}`])),
    );
  return [
    "Saved.",
    ...(isCounted ? [units(part, after)] : []),
    ...(still.length > 0 ? [`Still on record: ${still.join("; ")}.`] : []),
  ].join(" ");
}
