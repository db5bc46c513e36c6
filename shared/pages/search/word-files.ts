import { packRising } from "./packed-numbers.ts";
import type { WordFile } from "./search-index.ts";

export interface CutWordFile extends WordFile {
  readonly prefix: string;
}

/** About as much as a file may hold, in characters, before it is cut by the next letter of its words. */
const wanted = 32_000;
const deepest = 3;

/** Words with the entries that have them, by the places that the entries have in the catalogue. */
export function gatherWords(entries: Iterable<Iterable<string>>): Map<string, number[]> {
  const found = new Map<string, number[]>();
  let place = 0;
  for (const words of entries) {
    for (const word of words) {
      const places = found.get(word);
      if (places) places.push(place);
      else found.set(word, [place]);
    }
    place++;
  }
  return found;
}

const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The words in files that a reader fetches one or two of; an entry that changes leaves most files as they are. */
export function cutWordFiles(
  found: ReadonlyMap<string, readonly number[]>,
  size = wanted,
  packedOf: (word: string) => string = (word) => packRising(found.get(word) ?? []),
): CutWordFile[] {
  const words = [...found.keys()].sort(inOrder);
  const packed = words.map(packedOf);
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
