import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutWords, RememberedWords } from "../../shared/pages/search/remembered-words.ts";

const word = fc.constantFrom("lamp", "lantern", "oak", "oaken", "key", "keyed", "jet", "é");
const entry = fc.array(word, { maxLength: 6 }).map((words) => words.join(" "));

describe("the words of an index that is made again and again", () => {
  it("are cut as if they were gathered anew, whatever was changed, added or taken away", () => {
    fc.assert(
      fc.property(fc.array(fc.array(entry, { minLength: 1, maxLength: 4 }), { maxLength: 8 }), (versions) => {
        const remembered = new RememberedWords();
        for (const entries of versions) expect(remembered.cut(entries)).toEqual(cutWords(entries));
      }),
    );
  });

  it("are cut so after one change of many", () => {
    const entries = Array.from({ length: 200 }, (_, at) => `word${at % 7} word${at % 11} only${at}`);
    const remembered = new RememberedWords();
    remembered.cut(entries);
    const changed = entries.map((words, at) => (at === 77 ? "word3 new word5" : words));
    expect(remembered.cut(changed)).toEqual(cutWords(changed));
    expect(remembered.cut(entries)).toEqual(cutWords(entries));
  });
});
