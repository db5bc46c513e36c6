import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import type { CollectionFile, FileKind } from "../../source/collection-files.ts";
import type { SourceDocument } from "../../source/document.ts";
import type { ReadCollection, ReadRecord } from "../../source/read-records.ts";
import { diagnoseErrors } from "../../validation/diagnose-errors.ts";
import { fittingPart } from "../../validation/fitting.ts";
import type { Validate, Validator } from "../../validation/validator.ts";
import type { Report } from "../report.ts";

/** What was read of a collection, by kind, and where its problems are taken down while it is understood. */
export interface Intake {
  readonly read: ReadCollection;
  readonly validator: Validator;
  readonly recordsOf: (kind: FileKind) => readonly ReadRecord[];
  /** All that are there, those that cannot be read as well. */
  readonly filesOf: (kind: FileKind) => readonly CollectionFile[];
  /** Those that cannot be read. */
  readonly unreadOf: (kind: FileKind) => readonly CollectionFile[];
  readonly report: Report;
  readonly tell: (problems: Iterable<Diagnostic>) => void;
  /** A record as far as it fits its schema; what does not is taken down, and left out of it. */
  readonly fitting: (document: SourceDocument, validate: Validate) => SourceDocument;
  /** The same of a record whose variant was looked up: one that is not there is reported already, whatever its form. */
  readonly fittingOfVariant: (document: SourceDocument, validate: Validate) => SourceDocument;
  /** Records of which something is wrong, so that they can be checked, but not be taken for what they say. */
  readonly unsound: Set<object>;
}

export function intakeOf(read: ReadCollection, validator: Validator, diagnostics: Diagnostic[]): Intake {
  // One by one: a damaged log may have more to be told of than a call takes arguments.
  const tell = (problems: Iterable<Diagnostic>) => {
    for (const problem of problems) diagnostics.push(problem);
  };
  const isRead = new Set(read.records.map(({ file }) => file));
  const fitting = (
    document: SourceDocument,
    validate: Validate,
    isReported?: (problem: Diagnostic) => boolean,
  ): SourceDocument => {
    const errors = validate(document);
    if (errors.length === 0) return document;
    const problems = diagnoseErrors(document, errors);
    tell(isReported ? problems.filter((problem) => !isReported(problem)) : problems);
    return fittingPart(document, errors, validate);
  };
  return {
    read,
    validator,
    recordsOf: (kind) => read.records.filter((record) => record.kind === kind),
    filesOf: (kind) => read.files.filter((file) => file.kind === kind),
    unreadOf: (kind) => read.files.filter((file) => file.kind === kind && !isRead.has(file.file)),
    report: (code, document, path, finding, at) =>
      void diagnostics.push(diagnose(code, document.locate(path, at), finding)),
    tell,
    fitting,
    fittingOfVariant: (document, validate) =>
      fitting(document, validate, ({ code, line, column }) => {
        const { place } = document.locate(["variant"]);
        return code === "wrong-id" && line === place.line && column === place.column;
      }),
    unsound: new Set(),
  };
}
