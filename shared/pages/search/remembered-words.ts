import { packRising } from "./packed-numbers.ts";
import { type CutWordFile, cutWordFiles, gatherWords } from "./word-files.ts";

/** With more entries changed than this, or any added or gone, all are gathered again. */
const mostChanged = 50;

const wordsIn = (words: string): string[] => (words === "" ? [] : words.split(" "));

/** `words` as the words of each entry, with a blank between them. */
export type CutWords = (words: readonly string[]) => CutWordFile[];

export const cutWords: CutWords = (words) => cutWordFiles(gatherWords(words.map(wordsIn)));

/** The same, with what was found last kept: a preview makes an index again and again, each time with one entry changed. */
export class RememberedWords {
  #entries: readonly string[] = [];
  #found = new Map<string, number[]>();
  readonly #packed = new Map<string, string>();

  readonly cut: CutWords = (words) => {
    const changed = words.flatMap((entry, at) => (entry === this.#entries[at] ? [] : at));
    if (words.length !== this.#entries.length || changed.length > mostChanged) {
      this.#found = gatherWords(words.map(wordsIn));
      this.#packed.clear();
    } else {
      for (const at of changed) this.#change(at, words[at] ?? "");
    }
    this.#entries = words;
    return cutWordFiles(this.#found, undefined, (word) => this.#packedOf(word));
  };

  #change(place: number, words: string): void {
    for (const word of new Set(wordsIn(this.#entries[place] ?? ""))) {
      const left = (this.#found.get(word) ?? []).filter((each) => each !== place);
      if (left.length > 0) this.#found.set(word, left);
      else this.#found.delete(word);
      this.#packed.delete(word);
    }
    for (const word of wordsIn(words)) {
      const places = [...(this.#found.get(word) ?? []), place].sort((a, b) => a - b);
      this.#found.set(word, places);
      this.#packed.delete(word);
    }
  }

  #packedOf(word: string): string {
    const known = this.#packed.get(word);
    if (known !== undefined) return known;
    const packed = packRising(this.#found.get(word) ?? []);
    this.#packed.set(word, packed);
    return packed;
  }
}
