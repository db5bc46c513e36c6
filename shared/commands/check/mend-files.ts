import { readFileSync } from "node:fs";
import path from "node:path";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { markdownRecord, yamlRecord } from "../../source/record-file.ts";
import { staysInside } from "../../source/text-file.ts";
import { replaceText } from "../writing/replace-text.ts";
import { editedText, withoutTabs } from "./edited-text.ts";
import { mechanicalEdit } from "./mechanical-edit.ts";

/**
 * The file's own text, without a byte order mark; null where it is not the collection's, such as a register that comes
 * with the tool.
 */
function ownText(root: string, file: string): string | null {
  try {
    const full = path.join(root, file);
    return staysInside(root, full) ? readFileSync(full, "utf8").replace(/^\uFEFF/, "") : null;
  } catch {
    return null;
  }
}

const readsAsYaml = (file: string, text: string): boolean =>
  (file.endsWith(".md") ? markdownRecord(file, text) : yamlRecord(file, text)).document !== null;

/** Mends what is mechanical, and says what was done, a line each. */
export function mendFiles(root: string, diagnostics: readonly Diagnostic[]): string[] {
  const said: string[] = [];
  for (const file of new Set(diagnostics.map((each) => each.file))) {
    const own = ownText(root, file);
    if (own === null) continue;
    const ofFile = diagnostics.filter((each) => each.file === file);
    const { text, done } = editedText(
      own,
      ofFile.flatMap((each) => mechanicalEdit(each) ?? []),
    );
    const lines = done.map(
      ({ place, from, text: to }) =>
        `${file}:${place.line}:${place.column}  Replaced "${from}" with "${to}".`,
    );
    let mended = text;
    if (ofFile.some(({ code, remedy }) => code === "yaml-syntax" && remedy === "Indent with spaces.")) {
      const spaced = withoutTabs(text, file.endsWith(".md"));
      // Tabs may not have been all that is wrong; then a person should look before anything is changed.
      if (readsAsYaml(file, spaced)) {
        mended = spaced;
        lines.push(`${file}  Indented with spaces instead of tabs.`);
      }
    }
    if (mended === own) continue;
    // What somebody has changed meanwhile is not what was found wanting.
    if (replaceText(root, file, (now) => now === own, mended)) said.push(...lines);
  }
  return said;
}
