import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RememberedWords } from "../../shared/pages/search/remembered-words.ts";
import { gatherWords, joinWords } from "../../shared/pages/search/word-files.ts";

const word = fc.constantFrom("lamp", "lantern", "oak", "oaken", "key", "keyed", "jet", "é");
const entries = fc.array(
  fc.array(word, { maxLength: 6 }).map((words) => new Set(words)),
  { maxLength: 5 },
);
const list = entries.map((some) => ({ words: gatherWords(some), count: some.length }));

describe("words that are joined again and again", () => {
  it("are joined as if for the first time, whatever was changed, added or taken away", () => {
    fc.assert(
      fc.property(fc.array(fc.array(list, { maxLength: 4 }), { maxLength: 8 }), (versions) => {
        const remembered = new RememberedWords();
        for (const lists of versions) expect(remembered.join(lists)).toEqual(joinWords(lists));
      }),
    );
  });

  it("are so after one list of many has changed, and when it is as it was", () => {
    const lists = Array.from({ length: 40 }, (_, at) => ({
      words: gatherWords([new Set([`word${at % 7}`, "oak"]), new Set([`only${at}`])]),
      count: 2,
    }));
    const changed = lists.with(17, {
      words: gatherWords([new Set(["new", "word3"]), new Set(["oak"])]),
      count: 2,
    });
    const remembered = new RememberedWords();
    remembered.join(lists);
    expect(remembered.join(changed)).toEqual(joinWords(changed));
    expect(remembered.join(lists)).toEqual(joinWords(lists));
  });
});
