import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

/** The bytes 80 to 9F that the tests use, from the index of Windows-1252 in the WHATWG Encoding Standard. */
const windows1252: Readonly<Record<string, number>> = {
  "€": 0x80,
  "‘": 0x91,
  "’": 0x92,
  "“": 0x93,
  "”": 0x94,
  "–": 0x96,
};

export const asWindows1252 = (text: string): Uint8Array =>
  Uint8Array.from([...text].map((letter) => windows1252[letter] ?? letter.charCodeAt(0)));

export const asUtf16 = (text: string, mark = true): Uint8Array =>
  new Uint8Array(Buffer.from(`${mark ? "\uFEFF" : ""}${text}`, "utf16le"));

/** A spreadsheet in a folder of its own, outside of every collection. */
export function spreadsheet(
  content: string | Uint8Array,
  name = "old list.csv",
): { folder: string; file: string } {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-sheet-"));
  const file = path.join(folder, name);
  writeFileSync(file, content);
  return { folder, file };
}
