import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { markdownRecord, yamlRecord } from "../../source/record-file.ts";
import { staysInside } from "../../source/text-file.ts";
import { editedText, withoutTabs } from "./edited-text.ts";
import { mechanicalEdit } from "./mechanical-edit.ts";

/** The file's own text; null where it is not the collection's, such as a register that comes with the tool. */
function ownText(root: string, file: string): { bom: string; text: string } | null {
  try {
    const full = path.join(root, file);
    if (!staysInside(root, full)) return null;
    const written = readFileSync(full, "utf8");
    const bom = written.startsWith("\uFEFF") ? "\uFEFF" : "";
    return { bom, text: written.slice(bom.length) };
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
    if (!own) continue;
    const ofFile = diagnostics.filter((each) => each.file === file);
    const { text, done } = editedText(
      own.text,
      ofFile.flatMap((each) => mechanicalEdit(each) ?? []),
    );
    const lines = done.map(({ place, says }) => `${file}:${place.line}:${place.column}  ${says}`);
    let mended = text;
    if (ofFile.some(({ code, remedy }) => code === "yaml-syntax" && remedy === "Indent with spaces.")) {
      const spaced = withoutTabs(text, file.endsWith(".md"));
      // Tabs may not have been all that is wrong; then a person should look before anything is changed.
      if (readsAsYaml(file, spaced)) {
        mended = spaced;
        lines.push(`${file}  Indented with spaces instead of tabs.`);
      }
    }
    if (mended === own.text) continue;
    writeFileSync(path.join(root, file), own.bom + mended);
    said.push(...lines);
  }
  return said;
}
