import type { Diagnostic } from "./diagnostic.ts";

const plural = (count: number, word: string) => `${count} ${word}${count === 1 ? "" : "s"}`;

export function tally(diagnostics: readonly Diagnostic[]): { errors: number; warnings: number } {
  const errors = diagnostics.filter((each) => each.severity === "error").length;
  return { errors, warnings: diagnostics.length - errors };
}

export function reportAsText(diagnostics: readonly Diagnostic[], filesRead: number): string {
  const blocks = diagnostics.map((each) => {
    const frame = each.frame.replace(/^/gm, "  ");
    return `${each.file}:${each.line}:${each.column}  ${each.severity}  ${each.code}\n  ${each.message}\n${frame}\n`;
  });
  const { errors, warnings } = tally(diagnostics);
  const verdict =
    errors + warnings === 0
      ? `No problem in ${plural(filesRead, "file")}.`
      : `${plural(errors, "error")} and ${plural(warnings, "warning")} in ${plural(filesRead, "file")}.`;
  return [...blocks, verdict].join("\n");
}

export function reportAsJson(diagnostics: readonly Diagnostic[], filesRead: number): string {
  return JSON.stringify({ files: filesRead, ...tally(diagnostics), diagnostics }, null, 2);
}
