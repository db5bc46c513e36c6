import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { locusBetween } from "../diagnostics/place.ts";

/**
 * Embeddings, overrides and isolates (UAX #9, sections 2.1 to 2.4). Letters know their own direction, and the marks that
 * texts of two directions need (U+200E, U+200F, U+061C) are none of these.
 */
const turning = /[\u202a-\u202e\u2066-\u2069]/;

/** The same as an escape within the quotation marks of YAML or JSON, or by its number in Markdown. */
const written =
  /(?<!\\)(?:\\\\)*\\(?:u|U0000)(?<hex>20(?:2[a-e]|6[6-9]))(?<="[^\n]*)|&#(?:x0*(?<digits>20(?:2[a-e]|6[6-9]))|0*(?<decimal>823[4-8]|829[4-7]));/i;

/** The first character of a text by which what is read on a page may be another thing than what is written. */
export function turnedText(file: string, text: string): Diagnostic[] {
  const found = turning.exec(text) ?? (file.endsWith(".csv") ? null : written.exec(text));
  if (!found) return [];
  const { hex, digits = hex, decimal } = found.groups ?? {};
  const code = digits ?? Number(decimal ?? found[0].charCodeAt(0)).toString(16);
  return [
    diagnose("turned-text", locusBetween(file, text, found.index, found.index + found[0].length), {
      found: `U+${code.toUpperCase()}, an invisible character that changes the direction of the text after it`,
      expected: "text in the order in which it is read",
      remedy: "Type the passage again.",
    }),
  ];
}
