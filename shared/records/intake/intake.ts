import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import type { CollectionFile, FileKind } from "../../source/collection-files.ts";
import type { SourceDocument } from "../../source/document.ts";
import type { ReadCollection, ReadRecord } from "../../source/read-records.ts";
import type { Validate, Validator } from "../../validation/validator.ts";
import type { Report } from "../report.ts";

/** What was read of a collection, by kind, and where its problems are taken down while it is understood. */
export interface Intake {
  readonly read: ReadCollection;
  readonly validator: Validator;
  readonly recordsOf: (kind: FileKind) => readonly ReadRecord[];
  /** All that are there, those that cannot be read as well. */
  readonly filesOf: (kind: FileKind) => readonly CollectionFile[];
  readonly report: Report;
  readonly tell: (problems: Iterable<Diagnostic>) => void;
  /** Whether a record fits its schema; where it does not, its problems are taken down. */
  readonly isSound: (document: SourceDocument, validate: Validate) => boolean;
  /** The same of a record whose variant was looked up: one that is not there is told of already, whatever its form. */
  readonly isSoundOfVariant: (document: SourceDocument, validate: Validate) => boolean;
}

export function intakeOf(read: ReadCollection, validator: Validator, diagnostics: Diagnostic[]): Intake {
  // One by one: a damaged log may have more to be told of than a call takes arguments.
  const tell = (problems: Iterable<Diagnostic>) => {
    for (const problem of problems) diagnostics.push(problem);
  };
  const isSound = (
    document: SourceDocument,
    validate: Validate,
    isReported?: (problem: Diagnostic) => boolean,
  ) => {
    const problems = validate(document);
    tell(isReported ? problems.filter((problem) => !isReported(problem)) : problems);
    return problems.length === 0;
  };
  return {
    read,
    validator,
    recordsOf: (kind) => read.records.filter((record) => record.kind === kind),
    filesOf: (kind) => read.files.filter((file) => file.kind === kind),
    report: (code, document, path, finding, at) =>
      void diagnostics.push(diagnose(code, document.locate(path, at), finding)),
    tell,
    isSound,
    isSoundOfVariant: (document, validate) =>
      isSound(document, validate, ({ code, line, column }) => {
        const { place } = document.locate(["variant"]);
        return code === "wrong-id" && line === place.line && column === place.column;
      }),
  };
}
