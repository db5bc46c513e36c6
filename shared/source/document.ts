import type { LazyLocus } from "../diagnostics/diagnostic.ts";
import type { Locus } from "../diagnostics/place.ts";
import { LeftOut } from "./left-out.ts";

/** Keys and indexes from the top of a record to one of its values. */
export type Path = readonly (string | number)[];

/** One record as it was written, with the means to say where in its file each value stands. */
export interface SourceDocument {
  /** Relative to the collection's folder, with forward slashes. */
  readonly file: string;
  readonly data: unknown;
  /** The Markdown after the front matter; empty in other files. */
  readonly body: string;
  /** What was taken out of the data, since it does not fit. */
  readonly leftOut?: LeftOut;
  /** Where a value stands, or its key; where it is missing, the nearest thing around it that is not. */
  locate(path: Path, at?: "key" | "value"): Locus;
}

/** Where a value stands, to be worked out when it is told. */
export const placeIn = (document: SourceDocument, path: Path, at: "key" | "value" = "value"): LazyLocus => ({
  file: document.file,
  locate: () => document.locate(path, at),
});

/** Whether nothing can be said of a place of a record, since what stands at it, or in it, was left out. */
export const isLeftOut = ({ leftOut }: { readonly leftOut?: LeftOut | undefined }, ...path: Path): boolean =>
  leftOut?.touches(path) ?? false;

/** A record without what does not fit; whatever is told of the rest is told where it stands in the file. */
export function withoutAll(document: SourceDocument, paths: readonly Path[]): PartOfDocument {
  const leftOut = new LeftOut(paths, document.data);
  return {
    ...document,
    data: leftOut.rest(),
    leftOut,
    locate: (path, at) => document.locate(leftOut.placeBefore(path), at),
  };
}

interface PartOfDocument extends SourceDocument {
  readonly leftOut: LeftOut;
}
