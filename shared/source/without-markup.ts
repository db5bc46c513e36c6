/** Signs that are not printed where they stand within a word. */
const unprinted = "[*_~`\\u00ad\\u200b-\\u200d\\u2060\\ufeff]";

/** Letters and digits in another shape: joined, full-width, mathematical (UAX #15, compatibility equivalence). */
const reshaped = "[\\ufb00-\\ufb06\\uff10-\\uff19\\uff21-\\uff3a\\uff41-\\uff5a\\u{1d400}-\\u{1d7ff}]";

/** All of these, and signs that are written by their number or name. */
const markup = new RegExp(
  `${unprinted}+|&(?:#(\\d{1,7})|#[xX]([\\da-fA-F]{1,6})|\\w{2,31});|${reshaped}`,
  "gu",
);

/** Of most texts it is seen at once that they have none. */
const anyMarkup = new RegExp(`${unprinted}|&|${reshaped}`, "u");

/** What may stand between the letters of a serial and its number. */
const between = "[\\s./\\u2010-\\u2015-]*";

const withinWord = new RegExp(
  `(?<=[\\p{L}\\p{N};])${unprinted}+[\\p{L}&]|(?<=[\\p{L}\\p{N};]${between})${unprinted}+${between}${unprinted}*[\\p{N}&]|&#?\\w+;|${reshaped}`,
  "u",
);

/** Whether a word may stand in a text otherwise than it will be read. */
export const mayBeParted = (text: string): boolean => anyMarkup.test(text) && withinWord.test(text);

export interface PrintedText {
  readonly text: string;
  /** Of each of its letters, where in the source it begins and ends. */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

/** A text about as it will be read: H214 for `H*2*14` or `H&#50;14`, and for the same in full-width characters. */
export function withoutMarkup(source: string): PrintedText {
  let text = "";
  const starts: number[] = [];
  const ends: number[] = [];
  const add = (letters: string, start: number, end: number) => {
    for (let at = 0; at < letters.length; at++) {
      starts.push(letters.length === end - start ? start + at : start);
      ends.push(letters.length === end - start ? start + at + 1 : end);
    }
    text += letters;
  };
  let from = 0;
  for (const { 0: found, 1: decimal, 2: hexadecimal, index } of source.matchAll(markup)) {
    add(source.slice(from, index), from, index);
    from = index + found.length;
    if (!found.startsWith("&")) {
      if (/[\p{L}\p{N}]/u.test(found)) add(found.normalize("NFKC"), index, from);
      continue;
    }
    const code = decimal === undefined ? Number.parseInt(hexadecimal ?? "20", 16) : Number(decimal);
    // What has a name is no letter of a serial, and may stand between two.
    add(code > 0 && code <= 0x10ffff ? String.fromCodePoint(code).normalize("NFKC") : " ", index, from);
  }
  add(source.slice(from), from, source.length);
  return { text, starts, ends };
}

/** Where a pattern matches what is printed of a text, with what is read there. The pattern is global. */
export function printedMatches(
  source: string,
  pattern: RegExp,
): { readonly read: string; readonly start: number; readonly end: number }[] {
  if (!anyMarkup.test(source)) {
    return [...source.matchAll(pattern)].map(({ 0: read, index }) => ({
      read,
      start: index,
      end: index + read.length,
    }));
  }
  const { text, starts, ends } = withoutMarkup(source);
  return [...text.matchAll(pattern)].map(({ 0: read, index }) => ({
    read,
    start: starts[index] ?? 0,
    end: ends[index + read.length - 1] ?? source.length,
  }));
}

const marks = /[*_~`]/;

/** The source with every match in what is printed replaced, with the markup in it and around it. */
export function replacePrinted(source: string, pattern: RegExp, replacement: string): string {
  const { text, starts, ends } = withoutMarkup(source);
  let replaced = source;
  for (const { 0: found, index } of [...text.matchAll(pattern)].reverse()) {
    let start = starts[index] ?? 0;
    let end = ends[index + found.length - 1] ?? source.length;
    while (marks.test(source.charAt(start - 1))) start--;
    while (marks.test(source.charAt(end))) end++;
    replaced = replaced.slice(0, start) + replacement + replaced.slice(end);
  }
  return replaced;
}
