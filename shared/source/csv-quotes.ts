import type { Finding } from "../diagnostics/diagnostic.ts";

/** What is wrong with a quotation mark, from one offset of the text to another. */
export interface QuoteFault extends Finding {
  readonly start: number;
  readonly end: number;
}

const remedy = "Write a quotation mark within a cell twice, and put the whole cell in quotation marks.";

/**
 * The first quotation mark that RFC 4180 cannot make sense of, at the place where it is mended. A reader notices one that
 * is not closed at the next one, or at the end of the file, rows below the one that is wrong.
 */
export function quoteFault(text: string): QuoteFault | null {
  let cell = 0;
  for (let at = 0; at < text.length; at++) {
    const letter = text[at];
    if (letter === "," || letter === "\n" || letter === "\r") {
      cell = at + 1;
      continue;
    }
    if (letter !== '"') continue;
    if (text.slice(cell, at).trim() !== "")
      return { start: at, end: at + 1, found: "a quotation mark within a cell", expected: "none", remedy };
    const closed = closingMark(text, at);
    const after = closed === null ? null : /[ \t]*(?:[,\r\n]|$)/y;
    if (after) after.lastIndex = (closed ?? 0) + 1;
    if (closed !== null && after?.test(text)) {
      at = closed;
      continue;
    }
    const endOfLine = /\r|\n|$/.exec(text.slice(at))?.index ?? 1;
    const isOneLine = closed !== null && closed < at + endOfLine;
    return isOneLine
      ? {
          start: closed + 1,
          end: at + endOfLine,
          found: "text after the quotation mark that closes its cell",
          expected: "a comma or the end of the row",
          remedy,
        }
      : {
          start: at,
          end: at + endOfLine,
          found: "a quotation mark that is not closed",
          expected: "another where the cell ends",
          remedy,
        };
  }
  return null;
}

/** Where the mark stands that closes the one at a place; two of them are one of the text. */
function closingMark(text: string, open: number): number | null {
  for (let at = text.indexOf('"', open + 1); at >= 0; at = text.indexOf('"', at + 2))
    if (text[at + 1] !== '"') return at;
  return null;
}
