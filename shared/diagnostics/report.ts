import { type Diagnostic, isError } from "./diagnostic.ts";
import { visible } from "./visible-text.ts";

/** "1 file", "2 files". */
export const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;

export function tally(diagnostics: readonly Diagnostic[]): { errors: number; warnings: number } {
  const errors = diagnostics.filter(isError).length;
  return { errors, warnings: diagnostics.length - errors };
}

/** More than anybody mends before the next check. */
const mostShown = 500;

/**
 * Errors come last, where a terminal leaves its reader: a few hundred warnings would hide them. Where there are more
 * than can be shown, warnings give way to errors, and the rest is counted.
 */
export function reportAsText(
  diagnostics: readonly Diagnostic[],
  filesRead: number,
  most: number = mostShown,
): string {
  const grave = diagnostics.filter(isError).slice(0, most);
  const light = diagnostics.filter((each) => !isError(each)).slice(0, most - grave.length);
  const left = diagnostics.length - grave.length - light.length;
  const blocks = [...light, ...grave].map((each) => {
    const frame = each.frame.replace(/^/gm, "  ");
    return `${visible(each.file)}:${each.line}:${each.column}  ${each.severity}  ${each.code}\n  ${each.message}\n${frame}\n`;
  });
  const { errors, warnings } = tally(diagnostics);
  const verdict =
    errors + warnings === 0
      ? `No problem in ${counted(filesRead, "file")}.`
      : `${counted(errors, "error")} and ${counted(warnings, "warning")} in ${counted(filesRead, "file")}.`;
  if (left === 0) return [...blocks, verdict].join("\n");
  const shown = `The first ${grave.length + light.length} are shown, errors before warnings, and ${left.toLocaleString("en")} are not: fittedcase check --all shows every one.`;
  return [...blocks, verdict, shown].join("\n");
}

export function reportAsJson(diagnostics: readonly Diagnostic[], filesRead: number): string {
  return JSON.stringify({ files: filesRead, ...tally(diagnostics), diagnostics }, null, 2);
}
