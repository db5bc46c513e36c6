import { english } from "./english.ts";
import type { Words } from "./words.ts";

const languages: Readonly<Record<string, Words>> = { en: english };

/** The words of a BCP 47 language; English where the language is not spoken here. */
export function wordsFor(language: string): Words {
  const primary = language.toLowerCase().split("-")[0] ?? "en";
  return (Object.hasOwn(languages, primary) ? languages[primary] : undefined) ?? english;
}
