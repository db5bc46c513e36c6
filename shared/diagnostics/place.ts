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

let latest: { readonly text: string; readonly starts: readonly number[] } | undefined;

/** Where each line of a text begins. The latest text is kept: a log may have 100,000 problems, one after another. */
export function lineStarts(text: string): readonly number[] {
  if (latest?.text !== text) {
    const starts = [0];
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
    latest = { text, starts };
  }
  return latest.starts;
}

/** The index of the line that an offset lies in. */
function lineAt(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The stretch between two offsets of a text. */
export function locusBetween(file: string, text: string, start: number, end: number): Locus {
  const starts = lineStarts(text);
  const index = lineAt(starts, start);
  const line = index + 1;
  const column = start - (starts[index] ?? 0) + 1;
  // Looked up, not counted: a mapping of thousands of fields is a stretch for each mistake in it.
  const last = Math.max(start, Math.min(Math.max(start + 1, end), text.length));
  const lastIndex = lineAt(starts, last);
  const endColumn = last - (starts[lastIndex] ?? 0) + 1;
  return { place: { file, line, column, endLine: lastIndex + 1, endColumn }, text };
}
