import { type State, states } from "../../terms/states.ts";
import { isRefused, type Read } from "../../validation/written/read.ts";
import { readFlag } from "./readings.ts";

export type PartWord = { readonly state: State } | { readonly count: number };

/** What a cell in a column of its own says of a part: a state, yes or no, or how many. */
export function readPartWord(cell: string): Read<PartWord> {
  const word = cell
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");
  const state = states.find((each) => each === word);
  if (state) return { value: { state } };
  if (/^\d{1,4}$/.test(word) && word !== "0") return { value: { count: Number(word) } };
  const flag = readFlag(cell);
  return isRefused(flag)
    ? { reason: `Found "${cell}"; expected one of ${states.join(", ")}, or yes, no or a number.` }
    : { value: { state: flag.value ? "present" : "absent" } };
}
