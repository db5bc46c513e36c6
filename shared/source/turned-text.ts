import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { locusBetween } from "../diagnostics/place.ts";

/**
 * Embeddings, overrides and isolates (UAX #9, sections 2.1 to 2.4). Letters know their own direction, and the marks that
 * texts of two directions need (U+200E, U+200F, U+061C) are none of these.
 */
const turning = /[\u202a-\u202e\u2066-\u2069]/;

/** The first character of a text by which what is read on a page may be another thing than what is written. */
export function turnedText(file: string, text: string): Diagnostic[] {
  const at = text.search(turning);
  if (at < 0) return [];
  const code = text.charCodeAt(at).toString(16).toUpperCase();
  return [
    diagnose("turned-text", locusBetween(file, text, at, at + 1), {
      found: `U+${code}, an invisible character that changes the direction of the text after it`,
      expected: "text in the order in which it is read",
      remedy: "Type the passage again.",
    }),
  ];
}
