import { maskSign } from "../../publication/masked-sign.ts";
import { wordsIn } from "./folded-words.ts";
import type { OpenCatalogue } from "./open-catalogue.ts";
import { unpackRising } from "./packed-numbers.ts";
import { longestWord, type WordFile } from "./search-index.ts";

/** How well a word answers: a whole word of the title before its beginning, that before a part of it. */
export const weight = {
  whole: 9,
  start: 6,
  within: 3,
  variant: 4,
  masked: 5,
  text: 2,
  textStart: 1,
} as const;

/** A file of words as it is searched. */
export interface OpenWords {
  /** In order. */
  readonly words: readonly string[];
  readonly entries: readonly string[];
}

export const openWords = ({ words, entries }: WordFile): OpenWords => ({
  words: words === "" ? [] : words.split("\n"),
  entries: entries.split("\n"),
});

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** Letters, digits, masked digits; whatever is not ASCII counts as a letter, since the text is folded. */
const isWordCode = (code: number): boolean => isDigit(code) || (code >= 97 && code <= 122) || code > 127;

/** A running number begins where its prefix ends: 1241 is a whole word of S1241. */
function beginsAt(text: string, at: number): boolean {
  if (at === 0) return true;
  const before = text.charCodeAt(at - 1);
  if (!isWordCode(before)) return true;
  return isDigit(text.charCodeAt(at)) && !isDigit(before);
}

function endsAt(text: string, end: number): boolean {
  const after = text.charCodeAt(end);
  if (Number.isNaN(after) || !isWordCode(after)) return true;
  return isDigit(text.charCodeAt(end - 1)) && !isDigit(after);
}

const raise = (scores: Uint8Array, entry: number, to: number) => {
  if ((scores[entry] ?? 0) < to) scores[entry] = to;
};

function matchHeads({ heads, starts }: OpenCatalogue, word: string, scores: Uint8Array): void {
  const needsStart = word.length === 1;
  let entry = 0;
  for (let at = heads.indexOf(word); at >= 0; at = heads.indexOf(word, at + 1)) {
    const begins = beginsAt(heads, at);
    if (!begins && needsStart) continue;
    while ((starts[entry + 1] ?? Number.POSITIVE_INFINITY) <= at) entry++;
    const whole = begins && endsAt(heads, at + word.length);
    raise(scores, entry, whole ? weight.whole : begins ? weight.start : weight.within);
  }
}

/** Whether a serial that has a digit may be the masked one: every digit that is shown agrees, with its prefix or without. */
export function mayBe(typed: string, masked: string): boolean {
  const from = masked.length - typed.length;
  if (from < 0) return false;
  if (from > 0 && (isDigit(masked.charCodeAt(from - 1)) || masked.charAt(from - 1) === maskSign))
    return false;
  for (let at = 0; at < typed.length; at++) {
    const letter = masked.charAt(from + at);
    const isSame = letter === typed.charAt(at);
    if (!isSame && !(letter === maskSign && isDigit(typed.charCodeAt(at)))) return false;
  }
  return true;
}

/** The first place at or after which words are not less than this one. */
function firstFrom(words: readonly string[], word: string): number {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] ?? "") < word) low = middle + 1;
    else high = middle;
  }
  return low;
}

function matchText({ words, entries }: OpenWords, typed: string, scores: Uint8Array): void {
  const word = typed.slice(0, longestWord);
  for (let at = firstFrom(words, word); words[at]?.startsWith(word); at++) {
    const to = words[at] === word ? weight.text : weight.textStart;
    for (const entry of unpackRising(entries[at] ?? "")) raise(scores, entry, to);
  }
}

const isAnswer = (score: number): boolean => score > 0;

/** For every entry how well it answers; 0 where it does not. */
export interface WordMatch {
  readonly scores: Uint8Array;
  readonly any: boolean;
}

/** How well each entry answers to one folded word. */
export function matchWord(catalogue: OpenCatalogue, word: string, texts: readonly OpenWords[]): WordMatch {
  const { index, columns, variantTexts, masked } = catalogue;
  const scores = new Uint8Array(index.count);
  // A letter alone is in every name; it must begin a word there.
  const answers = variantTexts.map((text) =>
    word.length > 1 ? text.includes(word) : wordsIn(text).some((each) => each.startsWith(word)),
  );
  if (answers.includes(true)) {
    for (let entry = 0; entry < index.count; entry++) {
      if (answers[columns.variant[entry] ?? -1]) scores[entry] = weight.variant;
    }
  }
  if (word.length > 1) for (const text of texts) matchText(text, word, scores);
  if (word.length > 2 && /\d/.test(word)) {
    for (const [entry, serial] of masked) if (mayBe(word, serial)) raise(scores, entry, weight.masked);
  }
  matchHeads(catalogue, word, scores);
  return { scores, any: scores.some(isAnswer) };
}
