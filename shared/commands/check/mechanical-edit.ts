import type { DiagnosticCode } from "../../diagnostics/catalogue.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nowCalled, onlySuggested } from "../../diagnostics/nearest-name.ts";
import type { Place } from "../../diagnostics/place.ts";

/** A name to be put in the place of another. */
export interface Edit {
  readonly place: Place;
  /** What stands there now, without quotation marks. */
  readonly from: string;
  readonly text: string;
}

/** Names that are checked against a list, so that the one near name on it is what was meant. */
const renames: ReadonlySet<DiagnosticCode> = new Set([
  "unknown-field",
  "unknown-part",
  "unknown-feature",
  "unknown-variant",
  "unknown-source",
  "unknown-hazard",
  "unknown-scale",
  "wrong-value",
]);

/** The edit that mends a problem without anybody's judgement: a slip with exactly one near name, or a former name. */
export function mechanicalEdit(diagnostic: Diagnostic): Edit | undefined {
  const { code, found, remedy, file, line, column, endLine, endColumn } = diagnostic;
  const text = nowCalled(remedy) ?? (renames.has(code) ? onlySuggested(remedy) : undefined);
  const from = /^(?:a column )?"(.*)"$/s.exec(found)?.[1];
  if (text === undefined || from === undefined || from === text || line !== endLine) return undefined;
  return {
    place: { file, line, column, endLine, endColumn },
    from,
    text,
  };
}
