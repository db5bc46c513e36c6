/** Letters that no mark can be taken off, as people type them whose keyboard has not got them. */
const spelt: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
};
const unmarkable = /[ßæœøłđðþı]/g;
const isAscii = /^[\0-\x7f]*$/;

/** Text in which two spellings that differ in case, accents or width are the same. */
export function fold(text: string): string {
  if (isAscii.test(text)) return text.toLowerCase();
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(unmarkable, (letter) => spelt[letter] ?? letter);
}

/** What a masked serial has in place of its last digits. */
export const maskDot = "\u2022";

const between = /[^\p{L}\p{N}\u2022]+/u;

/** The words of a text that is folded already. A masked digit is a part of its word. */
export const wordsIn = (folded: string): string[] => folded.split(between).filter((word) => word !== "");
