import { isRefused } from "../../validation/written/read.ts";
import { currencyCode } from "../../validation/written/read-number.ts";
import { readPartWord } from "./part-words.ts";
import type { ReadRow, RowProblem } from "./read-row.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface SightingCells {
  /** Column of the log to text. */
  readonly cells: ReadonlyMap<string, string>;
  readonly problems: readonly RowProblem[];
}

/**
 * A row as the log has it. Columns of single parts become the lists `present` and `absent`; what those cannot
 * say, a count below the full quantity or another model, goes into the note.
 */
export function sightingCells(row: ReadRow, vocabulary: Vocabulary): SightingCells {
  const cells = new Map(row.fields);
  const problems = [...row.problems];
  const currency = cells.get("currency") ?? cells.get("price currency");
  cells.delete("price currency");
  if (currency !== undefined) cells.set("currency", currencyCode(currency));
  if (cells.get("relisted") === "false") cells.delete("relisted");

  const variant = cells.get("variant");
  const lists = { present: [] as string[], absent: [] as string[] };
  const remarks: string[] = [];
  for (const [part, cell] of row.parts) {
    const word = readPartWord(cell);
    if (isRefused(word)) {
      problems.push({ field: part, reason: word.reason });
      continue;
    }
    const quantity = vocabulary.quantityOf(variant, part);
    if ("count" in word.value) {
      if (word.value.count >= (quantity ?? 1)) lists.present.push(part);
      else remarks.push(`${part}: ${word.value.count} of ${quantity}`);
    } else if (word.value.state === "present") lists.present.push(part);
    // A part that the variant does not have is rightly not there.
    else if (word.value.state === "absent" && quantity !== undefined) lists.absent.push(part);
    else if (word.value.state === "substitute" || word.value.state === "unverified") {
      remarks.push(`${part}: ${word.value.state}`);
    }
  }
  for (const list of ["present", "absent"] as const) {
    // A list may name what has a column of its own.
    const names = new Set([...(cells.get(list)?.split(";") ?? []), ...lists[list]]);
    if (names.size > 0) cells.set(list, [...names].join(";"));
  }
  if (remarks.length > 0) cells.set("note", [cells.get("note"), ...remarks].filter(Boolean).join("; "));
  return { cells, problems };
}
