import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { idFrom } from "../../diagnostics/plain-words.ts";
import { UsageError } from "../command.ts";
import { replaceText } from "../writing/replace-text.ts";
import { writeNewFile } from "../writing/write-new-file.ts";
import type { ItemFile } from "./checked-items.ts";
import type { CheckedSheet } from "./checked-sheet.ts";
import { logText } from "./log-text.ts";

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
  addToLog(root, logOf(spreadsheet), fresh as readonly ReadonlyMap<string, string>[]);
  return [logOf(spreadsheet)];
}

function addToLog(root: string, file: string, rows: readonly ReadonlyMap<string, string>[]): void {
  const full = path.join(root, file);
  if (!existsSync(full)) {
    writeNewFile(root, file, logText(null, rows));
    return;
  }
  const existing = readFileSync(full, "utf8").replace(/^\uFEFF/, "");
  if (replaceText(root, file, (now) => now === existing, logText(existing, rows))) return;
  throw new UsageError(
    `Found "${file}" changed meanwhile, or behind a link that leads out of the collection; expected a file inside it that nobody else is writing to. Nothing was brought in: import again.`,
  );
}
