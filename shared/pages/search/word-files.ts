import { JoinedRising, packRising, unpackRising } from "./packed-numbers.ts";
import type { WordFile } from "./search-index.ts";

export interface CutWordFile extends WordFile {
  readonly prefix: string;
}

/** About as much as a file may hold, in characters, before it is cut by the next letter of its words. */
const wanted = 32_000;
const deepest = 3;

export function* linesOf({ words, entries }: WordFile): Generator<readonly [word: string, entries: string]> {
  if (words === "") return;
  const packed = entries.split("\n");
  for (const [at, word] of words.split("\n").entries()) yield [word, packed[at] ?? ""];
}

function asLines(found: ReadonlyMap<string, readonly number[]>): WordFile {
  const words = [...found.keys()].sort();
  return {
    words: words.join("\n"),
    entries: words.map((word) => packRising(found.get(word) ?? [])).join("\n"),
  };
}

/** Each word once, with the places of the entries that have it, however often they do. */
export function gatherWords(entries: Iterable<Iterable<string>>): WordFile {
  const found = new Map<string, number[]>();
  let place = 0;
  for (const words of entries) {
    for (const word of words) {
      const places = found.get(word);
      if (!places) found.set(word, [place]);
      else if (places.at(-1) !== place) places.push(place);
    }
    place++;
  }
  return asLines(found);
}

/** The words of one of the entries. */
export const wordsAt = (gathered: WordFile, place: number): string[] =>
  [...linesOf(gathered)].flatMap(([word, entries]) => (unpackRising(entries).includes(place) ? word : []));

/** The same with other words for one of the entries. */
export function replaceWords(gathered: WordFile, place: number, words: Iterable<string>): WordFile {
  const found = new Map<string, number[]>();
  for (const [word, entries] of linesOf(gathered)) {
    const others = unpackRising(entries).filter((each) => each !== place);
    if (others.length > 0) found.set(word, others);
  }
  for (const word of words)
    found.set(
      word,
      [...(found.get(word) ?? []), place].sort((a, b) => a - b),
    );
  return asLines(found);
}

/** The words of some entries, and how many entries they are. */
export interface WordList {
  readonly words: WordFile;
  readonly count: number;
}

/** The words of lists that follow one another: for each the places in all of them, packed. */
export type JoinWords = (lists: readonly WordList[]) => ReadonlyMap<string, string>;

export const joinWords: JoinWords = (lists) => {
  const found = new Map<string, JoinedRising>();
  let from = 0;
  for (const { words, count } of lists) {
    for (const [word, entries] of linesOf(words)) {
      let joined = found.get(word);
      if (!joined) {
        joined = new JoinedRising();
        found.set(word, joined);
      }
      joined.add(entries, from);
    }
    from += count;
  }
  return new Map([...found].map(([word, { packed }]) => [word, packed]));
};

/** The same for one word, by what each list has of it; empty where none has it. */
export function joinOne(
  lists: readonly { readonly entries: string | undefined; readonly count: number }[],
): string {
  const joined = new JoinedRising();
  let from = 0;
  for (const { entries, count } of lists) {
    if (entries !== undefined) joined.add(entries, from);
    from += count;
  }
  return joined.packed;
}

/** The words in files that a reader fetches one or two of; an entry that changes leaves most files as they are. */
export function cutWordFiles(found: ReadonlyMap<string, string>, size = wanted): CutWordFile[] {
  const words = [...found.keys()].sort();
  const packed = words.map((word) => found.get(word) ?? "");
  const files: CutWordFile[] = [];
  const sizes = words.map((word, at) => word.length + (packed[at]?.length ?? 0) + 2);

  const cut = (prefix: string, from: number, to: number) => {
    let total = 0;
    for (let at = from; at < to; at++) total += sizes[at] ?? 0;
    const write = (end: number) => {
      if (from < end)
        files.push({
          prefix,
          words: words.slice(from, end).join("\n"),
          entries: packed.slice(from, end).join("\n"),
        });
    };
    if (total <= size || prefix.length >= deepest) return write(to);
    // A word that is no longer than the beginning stands first, and keeps the file of the beginning.
    let at = from;
    while (at < to && (words[at]?.length ?? 0) <= prefix.length) at++;
    write(at);
    while (at < to) {
      const next = words[at]?.slice(0, prefix.length + 1) ?? "";
      let end = at + 1;
      while (end < to && words[end]?.startsWith(next)) end++;
      cut(next, at, end);
      at = end;
    }
  };
  cut("", 0, words.length);
  return files;
}
