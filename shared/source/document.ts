import type { LazyLocus } from "../diagnostics/diagnostic.ts";
import type { Locus } from "../diagnostics/place.ts";

/** Keys and indexes from the top of a record to one of its values. */
export type Path = readonly (string | number)[];

/** One record as it was written, with the means to say where in its file each value stands. */
export interface SourceDocument {
  /** Relative to the collection's folder, with forward slashes. */
  readonly file: string;
  readonly data: unknown;
  /** The Markdown after the front matter; empty in other files. */
  readonly body: string;
  /** Where a value stands, or its key; where it is missing, the nearest thing around it that is not. */
  locate(path: Path, at?: "key" | "value"): Locus;
}

/** Where a value stands, to be worked out when it is told. */
export const placeIn = (document: SourceDocument, path: Path, at: "key" | "value" = "value"): LazyLocus => ({
  file: document.file,
  locate: () => document.locate(path, at),
});
