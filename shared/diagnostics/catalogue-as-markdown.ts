import { catalogue } from "./catalogue.ts";

/** The catalogue of problems as a Markdown table, for the documentation. */
export function catalogueAsMarkdown(): string {
  const rows = Object.entries(catalogue).map(
    ([code, { severity, meaning }]) => `| \`${code}\` | ${severity} | ${meaning.replaceAll("|", "\\|")} |`,
  );
  return ["| Code | Severity | Meaning |", "| --- | --- | --- |", ...rows].join("\n");
}
