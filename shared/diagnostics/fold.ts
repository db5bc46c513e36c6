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
