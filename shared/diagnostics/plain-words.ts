import { fold } from "./fold.ts";

/** A heading or a name without case, accents and punctuation: the form in which two are compared. */
export const plainWords = (text: string): string =>
  fold(text)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

export const wellFormedId = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** A name as an id: small letters, digits and single hyphens. */
export const idFrom = (text: string): string =>
  plainWords(text)
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");

/** "Did you mean …?", with the id that a name would be; undefined where nothing of it could stand in one. */
export function idSuggestion(name: string): string | undefined {
  const id = idFrom(name);
  return id === "" ? undefined : `Did you mean "${id}"?`;
}
