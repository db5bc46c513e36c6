import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";
import { idFrom } from "../../diagnostics/plain-words.ts";
import { staysInside } from "../../source/text-file.ts";
import { UsageError } from "../command.ts";
import { writeNewFile } from "../write-new-file.ts";
import type { ItemFile } from "./checked-items.ts";
import type { CheckedSheet } from "./checked-sheet.ts";
import { logText } from "./log-text.ts";

/** Puts the whole new text in the place of the old in one rename. */
function replaceFile(root: string, file: string, text: string): void {
  const full = path.join(root, file);
  mkdirSync(path.dirname(full), { recursive: true });
  if (!staysInside(root, existsSync(full) ? full : path.dirname(full))) {
    throw new UsageError(
      `Found a link that leads "${file}" out of the collection; expected a file inside it.`,
    );
  }
  const draft = `${full}.${process.pid}.draft`;
  writeFileSync(draft, text);
  renameSync(draft, full);
}

/** Rows of one spreadsheet, and what was corrected of it, come into one log. */
const logOf = (spreadsheet: string): string => {
  const name = path.basename(spreadsheet).replace(/(?:\.rejected(?:-\d+)?)*\.[^.]*$/, "");
  return `content/sightings/${idFrom(name) || "imported"}.csv`;
};

/** Writes the rows that are new, and says into which files. */
export function writeRows(root: string, spreadsheet: string, { kind, rows }: CheckedSheet): string[] {
  const fresh = rows.flatMap((row) => (row.fate === "new" ? [row.content] : []));
  if (fresh.length === 0) return [];
  if (kind === "items") {
    const files = fresh as readonly ItemFile[];
    for (const { file, text } of files) writeNewFile(root, file, text);
    return files.length > 3
      ? [`${files.length.toLocaleString("en")} items into content/items/`]
      : files.map(({ file }) => file);
  }
  const file = logOf(spreadsheet);
  const full = path.join(root, file);
  const existing = existsSync(full) ? readFileSync(full, "utf8").replace(/^\uFEFF/, "") : null;
  replaceFile(root, file, logText(existing, fresh as readonly ReadonlyMap<string, string>[]));
  return [file];
}
