import { catalogue, type DiagnosticCode } from "./catalogue.ts";
import { codeFrame } from "./code-frame.ts";
import type { Locus, Place } from "./place.ts";

export interface Diagnostic extends Place {
  readonly code: DiagnosticCode;
  readonly severity: "error" | "warning";
  readonly found: string;
  readonly expected: string;
  readonly remedy: string | null;
  /** The three above as one or two sentences. */
  readonly message: string;
  readonly frame: string;
}

export interface Finding {
  readonly found: string;
  readonly expected: string;
  /** A sentence of its own, with its full stop. */
  readonly remedy?: string | undefined;
}

export function diagnose(code: DiagnosticCode, locus: Locus, finding: Finding): Diagnostic {
  const remedy = finding.remedy ? ` ${finding.remedy}` : "";
  return {
    ...locus.place,
    code,
    severity: catalogue[code].severity,
    found: finding.found,
    expected: finding.expected,
    remedy: finding.remedy ?? null,
    message: `Found ${finding.found}; expected ${finding.expected}.${remedy}`,
    frame: codeFrame(locus.text, locus.place),
  };
}

/** By file, then by place, so that the same content is always reported in the same order. */
export function inReadingOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  return [...diagnostics].sort(
    (a, b) =>
      byText(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      byText(a.code, b.code) ||
      byText(a.message, b.message),
  );
}
