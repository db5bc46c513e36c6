/** XML 1.0 has no way to write most control characters, or half of a surrogate pair, escaped or not. */
const unwritable = /(?![\t\n\r\u007f-\u009f])[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu;

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

export const xmlText = (text: string): string =>
  text.replace(unwritable, "").replace(/[&<>"]/g, (letter) => entities[letter] ?? letter);
