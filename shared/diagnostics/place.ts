/** A stretch of a source file. Lines and columns count from 1; the end is exclusive. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** A place together with the text it lies in, so that a frame can be drawn. */
export interface Locus {
  readonly place: Place;
  readonly text: string;
}

/** The first character of a file: where a problem of the whole file is shown. */
export const startOf = (file: string, text = ""): Locus => ({
  place: { file, line: 1, column: 1, endLine: 1, endColumn: 2 },
  text,
});

/** The stretch between two offsets of a text. */
export function locusBetween(file: string, text: string, start: number, end: number): Locus {
  const before = text.slice(0, start);
  const line = before.split("\n").length;
  const column = start - before.lastIndexOf("\n");
  const within = text.slice(start, Math.max(start + 1, end));
  const extraLines = within.split("\n").length - 1;
  const endColumn = extraLines === 0 ? column + within.length : within.length - within.lastIndexOf("\n");
  return { place: { file, line, column, endLine: line + extraLines, endColumn }, text };
}
