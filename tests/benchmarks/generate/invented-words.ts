import type { Random } from "./random.ts";

const onsets = [
  "b",
  "br",
  "d",
  "dr",
  "f",
  "g",
  "gr",
  "h",
  "k",
  "l",
  "m",
  "n",
  "p",
  "qu",
  "r",
  "s",
  "sk",
  "st",
  "t",
  "th",
  "tr",
  "v",
  "w",
];
const vowels = ["a", "e", "i", "o", "u", "ai", "ea", "oa", "ou", "ie"];
const codas = ["", "", "", "n", "r", "l", "s", "m", "ck", "nd", "rn", "lt", "sk", "th"];
const accented = ["é", "ö", "å", "ø", "á", "ü"];

function invented(random: Random, syllables: number, accent: boolean): string {
  let word = "";
  for (let at = 0; at < syllables; at++) {
    const vowel = accent && at === 0 ? random.pick(accented) : random.pick(vowels);
    word += random.pick(onsets) + vowel + random.pick(codas);
  }
  return word;
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** So many different words, none of them anybody's. */
export function inventedWords(random: Random, count: number): string[] {
  const words = new Set<string>();
  while (words.size < count) words.add(invented(random, 1 + random.below(3), false));
  return [...words];
}

/** So many different names of places, one in eight with a letter that bears a mark. */
export function inventedNames(random: Random, count: number): string[] {
  const names = new Set<string>();
  while (names.size < count) names.add(capital(invented(random, 2 + random.below(2), random.chance(0.125))));
  return [...names];
}

/** Running text: common words often, most words seldom. */
export function inventedText(random: Random, words: readonly string[], length: number): string {
  const sentences: string[] = [];
  for (let left = length; left > 0; ) {
    const size = Math.min(left, 6 + random.below(14));
    const sentence = Array.from({ length: size }, () => words[random.ranked(words.length)] ?? "");
    sentences.push(`${capital(sentence.join(" "))}.`);
    left -= size;
  }
  return sentences.join(" ");
}
