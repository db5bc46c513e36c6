/** Whatever moves a cursor or turns letters round; with the numbers of the sequences by which paint.ts dresses text. */
const controls = /\p{Cc}\[(?:1|2|4|22|24|31|32|33|36|39)m|(?![\n\t])[\p{Cc}\p{Bidi_C}]/gu;

/** Begins a sequence (ECMA-48, SGR). */
const dress = "\u001b[";

/** What a terminal may be given of a record's words: they cannot clear it, name it, or hide what they say. */
export const printable = (text: string): string =>
  text.replace(controls, (found) => (found.startsWith(dress) ? found : `\u00b7${found.slice(1)}`));
