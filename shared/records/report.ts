import type { DiagnosticCode } from "../diagnostics/catalogue.ts";
import type { Finding } from "../diagnostics/diagnostic.ts";
import type { Path, SourceDocument } from "../source/document.ts";

/** Takes down a problem at a place of a record. */
export type Report = (
  code: DiagnosticCode,
  document: SourceDocument,
  path: Path,
  finding: Finding,
  at?: "key" | "value",
) => void;
