import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shardsFor } from "../../shared/pages/search/find-entries.ts";
import { openWords } from "../../shared/pages/search/match-word.ts";
import { unpackRising } from "../../shared/pages/search/packed-numbers.ts";
import { cutWordFiles, gatherWords } from "../../shared/pages/search/word-files.ts";

const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "é"), minLength: 2, maxLength: 6 });
const entries = fc.array(
  fc.array(word, { maxLength: 12 }).map((words) => new Set(words)),
  { maxLength: 20 },
);

describe("files of words", () => {
  it("hold each word once, with every entry that has it", () =>
    fc.assert(
      fc.property(entries, fc.integer({ min: 1, max: 400 }), (some, size) => {
        const held = new Map<string, number[]>();
        for (const file of cutWordFiles(gatherWords(some), size)) {
          const { words, entries: places } = openWords(file);
          words.forEach((each, at) => {
            expect(held.has(each)).toBe(false);
            expect(each.startsWith(file.prefix)).toBe(true);
            held.set(each, unpackRising(places[at] ?? ""));
          });
        }
        const all = new Set(some.flatMap((words) => [...words]));
        expect(new Set(held.keys())).toEqual(all);
        for (const each of all) {
          const having = some.flatMap((words, at) => (words.has(each) ? [at] : []));
          expect(held.get(each)).toEqual(having);
        }
      }),
    ));

  it("are found by whatever a word of theirs begins with, from three letters on", () =>
    fc.assert(
      fc.property(entries, fc.integer({ min: 1, max: 400 }), (some, size) => {
        const files = cutWordFiles(gatherWords(some), size);
        for (const each of new Set(some.flatMap((words) => [...words]))) {
          for (let length = Math.min(3, each.length); length <= each.length; length++) {
            const typed = each.slice(0, length);
            if (typed.length < 3 && typed !== each) continue;
            const found = shardsFor(files, typed).flatMap((file) => openWords(file).words);
            expect(found).toContain(each);
          }
        }
      }),
    ));

  it("are cut no further than they must be", () => {
    const small = gatherWords([new Set(["lamp", "lantern", "oak"])]);
    expect(cutWordFiles(small).map(({ prefix }) => prefix)).toEqual([""]);
  });
});
