import type { Random } from "../benchmarks/generate/random.ts";
import { editedCollection } from "./edited-collection.ts";
import { itemEdits } from "./item-edits.ts";
import { referenceEdits } from "./reference-edits.ts";
import { wholeEdits } from "./whole-edits.ts";

/** What a writer does to a collection in a day, as one change each; says what was done. */
export function randomEdit(
  root: string,
  random: Random,
  step: number,
  pictures: readonly Uint8Array[],
): string {
  const edited = editedCollection(root, random, step);
  const of = random.pick([
    () => itemEdits(edited, pictures),
    () => referenceEdits(edited),
    () => wholeEdits(edited),
  ]);
  const [name, edit] = random.pick(Object.entries(of()));
  edit();
  return name;
}
