import { textWidth } from "./text-width.ts";

/** Any space but those that forbid a break. */
const breakable = /[^\S\u00a0\u202f]+/;

/** The text in as few lines as the width allows; null where a word is wider than that. */
export function textLines(text: string, size: number, width: number): readonly string[] | null {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(breakable).filter(Boolean)) {
    if (textWidth(word, size) > width) return null;
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (line !== "") lines.push(line);
  return lines;
}

/** The text in lines of at most the width, breaking a word that is wider; never nothing, never too wide. */
export function brokenLines(text: string, size: number, width: number): readonly string[] {
  const whole = textLines(text, size, width);
  if (whole) return whole;
  const pieces = text.split(breakable).flatMap((word) => pieceWord(word, size, width));
  return textLines(pieces.join(" "), size, width) ?? pieces;
}

function pieceWord(word: string, size: number, width: number): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && textWidth(`${piece}${letter}`, size) > width) {
      pieces.push(piece);
      piece = letter;
    } else {
      piece += letter;
    }
  }
  return [...pieces, piece];
}

/** The text, or its beginning and an ellipsis where it is wider than the room. */
export function shortened(text: string, size: number, width: number): string {
  if (textWidth(text, size) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join("").trimEnd()}…`, size) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}
