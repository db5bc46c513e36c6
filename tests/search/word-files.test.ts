import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shardsFor } from "../../shared/pages/search/find-entries.ts";
import { openWords } from "../../shared/pages/search/match-word.ts";
import { unpackRising } from "../../shared/pages/search/packed-numbers.ts";
import {
  cutWordFiles,
  gatherWords,
  joinWords,
  replaceWords,
  wordsAt,
} from "../../shared/pages/search/word-files.ts";

type Words = ReadonlySet<string>;

const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "é"), minLength: 2, maxLength: 6 });
const entry = fc.array(word, { maxLength: 12 }).map((words): Words => new Set(words));
const entries = fc.array(entry, { maxLength: 20 });

/** All words of some entries, which are gathered as one list. */
const found = (some: readonly Words[]) => joinWords([{ words: gatherWords(some), count: some.length }]);

const having = (some: readonly Words[], each: string): number[] =>
  some.flatMap((words, at) => (words.has(each) ? [at] : []));

describe("files of words", () => {
  it("hold each word once, with every entry that has it", () =>
    fc.assert(
      fc.property(entries, fc.integer({ min: 1, max: 400 }), (some, size) => {
        const held = new Map<string, number[]>();
        for (const file of cutWordFiles(found(some), size)) {
          const { words, entries: places } = openWords(file);
          words.forEach((each, at) => {
            expect(held.has(each)).toBe(false);
            expect(each.startsWith(file.prefix)).toBe(true);
            held.set(each, unpackRising(places[at] ?? ""));
          });
        }
        const all = new Set(some.flatMap((words) => [...words]));
        expect(new Set(held.keys())).toEqual(all);
        for (const each of all) expect(held.get(each)).toEqual(having(some, each));
      }),
    ));

  it("are found by whatever a word of theirs begins with, from three letters on", () =>
    fc.assert(
      fc.property(entries, fc.integer({ min: 1, max: 400 }), (some, size) => {
        const files = cutWordFiles(found(some), size);
        for (const each of new Set(some.flatMap((words) => [...words]))) {
          for (let length = Math.min(3, each.length); length <= each.length; length++) {
            const typed = each.slice(0, length);
            if (typed.length < 3 && typed !== each) continue;
            const held = shardsFor(files, typed).flatMap((file) => openWords(file).words);
            expect(held).toContain(each);
          }
        }
      }),
    ));

  it("are cut no further than they must be", () => {
    const small = found([new Set(["lamp", "lantern", "oak"])]);
    expect(cutWordFiles(small).map(({ prefix }) => prefix)).toEqual([""]);
  });
});

describe("gathered words", () => {
  it("of lists that follow one another are those of one list", () =>
    fc.assert(
      fc.property(fc.array(entries, { maxLength: 4 }), (lists) => {
        const joined = joinWords(lists.map((some) => ({ words: gatherWords(some), count: some.length })));
        const all = lists.flat();
        expect(new Set(joined.keys())).toEqual(new Set(all.flatMap((words) => [...words])));
        for (const [each, packed] of joined) expect(unpackRising(packed)).toEqual(having(all, each));
      }),
    ));

  it("join places beyond what one character can say", () => {
    const joined = joinWords([
      { words: gatherWords([new Set(["oak"])]), count: 120_000 },
      { words: gatherWords([new Set(["elm"]), new Set(["oak"])]), count: 60_000 },
      { words: gatherWords([new Set(["oak", "elm"])]), count: 1 },
    ]);
    expect(unpackRising(joined.get("oak") ?? "")).toEqual([0, 120_001, 180_000]);
    expect(unpackRising(joined.get("elm") ?? "")).toEqual([120_000, 180_000]);
  });

  it("take other words for one entry as if they were gathered anew", () =>
    fc.assert(
      fc.property(fc.array(entry, { minLength: 1, maxLength: 20 }), fc.nat(), entry, (some, at, now) => {
        const place = at % some.length;
        expect(new Set(wordsAt(gatherWords(some), place))).toEqual(some[place]);
        const replaced = replaceWords(gatherWords(some), place, now);
        const anew = some.with(place, now);
        expect(replaced).toEqual(gatherWords(anew));
      }),
    ));
});
