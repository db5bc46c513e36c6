import { type Locus, lineStarts, locusBetween } from "../diagnostics/place.ts";
import type { Path, SourceDocument } from "./document.ts";

/** A stretch of a record's Markdown in its file, of which the Markdown is the end. */
export function locateInBody(document: SourceDocument, start: number, end: number): Locus {
  const { text } = document.locate([]);
  const before = text.length - document.body.length;
  return locusBetween(document.file, text, before + start, before + end);
}

/** Words within a value; where the file writes them otherwise (folded, or escaped), the value itself. */
export function locateInValue(document: SourceDocument, path: Path, words: string): Locus {
  const value = document.locate(path, "key");
  const { text, place } = value;
  const from = (lineStarts(text)[place.line - 1] ?? 0) + place.column - 1;
  const at = text.indexOf(words, from);
  return at < 0 ? value : locusBetween(document.file, text, at, at + words.length);
}
