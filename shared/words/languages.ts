import { germanBench } from "./de/bench.ts";
import { german } from "./de/german.ts";
import { type BenchWords, englishBench } from "./en/bench.ts";
import { english } from "./en/english.ts";
import type { Words } from "./words.ts";

const languages: Readonly<Record<string, Words>> = { en: english, de: german };
const benches: Readonly<Record<string, BenchWords>> = { en: englishBench, de: germanBench };

/** By their primary subtags. */
export const spokenLanguages: readonly string[] = Object.keys(languages);

/** Of a BCP 47 tag, the language alone: "de-AT" is spoken as "de" is. */
const primary = (language: string): string => language.toLowerCase().split("-")[0] ?? "";

export const isSpoken = (language: string): boolean => Object.hasOwn(languages, primary(language));

/** The words of a BCP 47 language; English where the language is not spoken here. */
export const wordsFor = (language: string): Words =>
  (isSpoken(language) ? languages[primary(language)] : undefined) ?? english;

/** What is said at the bench, apart from the words that every site carries with it. */
export const benchWordsFor = (language: string): BenchWords =>
  benches[wordsFor(language).language] ?? englishBench;
