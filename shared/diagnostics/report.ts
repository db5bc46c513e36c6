import { type Diagnostic, isError } from "./diagnostic.ts";
import { visible } from "./visible-text.ts";

/** "1 file", "2 files". */
export const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;

export function tally(diagnostics: readonly Diagnostic[]): { errors: number; warnings: number } {
  const errors = diagnostics.filter(isError).length;
  return { errors, warnings: diagnostics.length - errors };
}

/** Errors come last, where a terminal leaves its reader: a few hundred warnings would hide them. */
export function reportAsText(diagnostics: readonly Diagnostic[], filesRead: number): string {
  const inOrder = [...diagnostics].sort((a, b) => Number(isError(a)) - Number(isError(b)));
  const blocks = inOrder.map((each) => {
    const frame = each.frame.replace(/^/gm, "  ");
    return `${visible(each.file)}:${each.line}:${each.column}  ${each.severity}  ${each.code}\n  ${each.message}\n${frame}\n`;
  });
  const { errors, warnings } = tally(diagnostics);
  const verdict =
    errors + warnings === 0
      ? `No problem in ${counted(filesRead, "file")}.`
      : `${counted(errors, "error")} and ${counted(warnings, "warning")} in ${counted(filesRead, "file")}.`;
  return [...blocks, verdict].join("\n");
}

export function reportAsJson(diagnostics: readonly Diagnostic[], filesRead: number): string {
  return JSON.stringify({ files: filesRead, ...tally(diagnostics), diagnostics }, null, 2);
}
