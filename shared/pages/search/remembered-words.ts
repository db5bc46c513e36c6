import { type JoinWords, joinOne, linesOf, type WordList } from "./word-files.ts";

interface Remembered extends WordList {
  readonly lines: ReadonlyMap<string, string>;
}

/**
 * Words joined as before, but for those of which some list says something else now: a preview joins the lists again and
 * again, each time with a few entries changed.
 */
export class RememberedWords {
  #lists: readonly Remembered[] = [];
  #joined = new Map<string, string>();

  readonly join: JoinWords = (lists) => {
    const before = this.#lists;
    const now = lists.map(({ words, count }, at): Remembered => {
      const known = before[at];
      return known?.words === words && known.count === count
        ? known
        : { words, count, lines: new Map(linesOf(words)) };
    });
    const isAlike = now.length === before.length && now.every(({ count }, at) => count === before[at]?.count);
    if (!isAlike) this.#joined = new Map();
    const changed = new Set(
      now.flatMap(({ lines }, at) => differing(isAlike ? (before[at]?.lines ?? lines) : new Map(), lines)),
    );
    for (const word of changed) {
      const joined = joinOne(now.map(({ lines, count }) => ({ entries: lines.get(word), count })));
      if (joined === "") this.#joined.delete(word);
      else this.#joined.set(word, joined);
    }
    this.#lists = now;
    return this.#joined;
  };
}

/** The words of which two lists do not say the same. */
function differing(before: ReadonlyMap<string, string>, now: ReadonlyMap<string, string>): string[] {
  if (before === now) return [];
  return [
    ...[...now].flatMap(([word, entries]) => (before.get(word) === entries ? [] : word)),
    ...[...before.keys()].filter((word) => !now.has(word)),
  ];
}
