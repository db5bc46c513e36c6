/** XML 1.0 has no way to write most control characters, escaped or not. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be removed
const unwritable =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

export const xmlText = (text: string): string =>
  text.replace(unwritable, "").replace(/[&<>"]/g, (letter) => entities[letter] ?? letter);

/** The address of a page as it will stand in the world. */
export const absolute = (siteUrl: string, address: string): string => siteUrl.replace(/\/$/, "") + address;
