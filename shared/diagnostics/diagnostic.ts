import { catalogue, type DiagnosticCode } from "./catalogue.ts";
import { codeFrame } from "./code-frame.ts";
import type { Locus, Place } from "./place.ts";
import { readable } from "./visible-text.ts";

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

/** Whether it keeps the site from being built. */
export const isError = ({ severity }: Diagnostic): boolean => severity === "error";

export interface Finding {
  readonly found: string;
  readonly expected: string;
  /** A sentence of its own, with its full stop. */
  readonly remedy?: string | undefined;
}

/** A place that is worked out when somebody asks for it: to find a value in its file takes longer than to read it. */
export interface LazyLocus {
  readonly file: string;
  readonly locate: () => Locus;
}

export function diagnose(code: DiagnosticCode, locus: Locus | LazyLocus, finding: Finding): Diagnostic {
  const found = readable(finding.found);
  const expected = readable(finding.expected);
  const remedy = finding.remedy ? readable(finding.remedy) : null;
  let place = "locate" in locus ? undefined : locus;
  const at = (): Locus => {
    place ??= (locus as LazyLocus).locate();
    return place;
  };
  return {
    file: "locate" in locus ? locus.file : locus.place.file,
    get line() {
      return at().place.line;
    },
    get column() {
      return at().place.column;
    },
    get endLine() {
      return at().place.endLine;
    },
    get endColumn() {
      return at().place.endColumn;
    },
    code,
    severity: catalogue[code].severity,
    found,
    expected,
    remedy,
    message: `Found ${found}; expected ${expected}.${remedy === null ? "" : ` ${remedy}`}`,
    get frame() {
      return codeFrame(at().text, at().place);
    },
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
