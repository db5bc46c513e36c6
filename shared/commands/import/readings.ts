import type { Read } from "../../validation/written/read.ts";

/** Cells that people fill so that they are not empty, and that say nothing; a longer one says something. */
export const saysNothing = (cell: string): boolean =>
  cell.trim().length <= 100 &&
  /^(?:|[-–—.?]+|n\.?\s*\/?\s*a\.?|none given|unknown|not known|not stated|unstated|unbekannt|nicht bekannt|keine angabe|k\.?\s*a\.?)$/i.test(
    cell.trim(),
  );

const yes = new Set("yes y true 1 x ✓ ✔ present there has ja oui si sì sí vorhanden".split(" "));
const no = new Set("no n false 0 absent missing gone lacking nein non not without fehlt fehlend".split(" "));

export function readFlag(cell: string): Read<boolean> {
  const word = cell.trim().toLowerCase();
  if (yes.has(word)) return { value: true };
  if (no.has(word)) return { value: false };
  return { reason: `Found "${cell}"; expected yes or no.` };
}
