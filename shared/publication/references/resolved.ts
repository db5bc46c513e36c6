import type { DiagnosticCode } from "../../diagnostics/catalogue.ts";
import type { Finding } from "../../diagnostics/diagnostic.ts";
import { type Renamed, suggestion } from "../../diagnostics/nearest-name.ts";

/** What a reference leads to, or why it leads nowhere. */
export type Resolved<Value> = { readonly value: Value } | { readonly problem: Finding };

export const unknownName = (name: string, expected: string, known: Iterable<string | Renamed>): Finding => ({
  found: `"${name}"`,
  expected,
  remedy: suggestion(name, known),
});

export function unknownAmong(
  values: readonly string[],
  known: readonly (string | Renamed)[],
  expected: string,
): Finding | null {
  if (values.length === 0) return { found: "no value", expected };
  const ids = known.map((each) => (typeof each === "string" ? each : each.id));
  const strange = values.find((value) => !ids.includes(value));
  return strange === undefined ? null : unknownName(strange, expected, known);
}

/** What is wrong with a stretch of a text. */
export interface Problem {
  readonly code: DiagnosticCode;
  readonly finding: Finding;
}
