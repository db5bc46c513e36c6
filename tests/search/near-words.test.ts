import fc from "fast-check";
import { distance } from "fastest-levenshtein";
import { describe, expect, it } from "vitest";
import { nearWords, slips, slipsIn } from "../../shared/pages/search/near-words.ts";

const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "d"), minLength: 1, maxLength: 9 });
const most = 9;

/** Levenshtein's distance to the nearest beginning of the word, by another library. */
const toBeginning = (typed: string, other: string): number =>
  Math.min(...Array.from({ length: other.length + 1 }, (_, end) => distance(typed, other.slice(0, end))));

describe("slips of the finger", () => {
  // By hand: a letter changed about, left out, put in, put for another.
  it.each([
    ["quernby", "quernby", 0],
    ["quern", "quernby", 0],
    ["qurenby", "quernby", 1],
    ["qernby", "quernby", 1],
    ["queernby", "quernby", 1],
    ["quernbi", "quernby", 1],
    ["twale", "thwale", 1],
    ["wthale", "thwale", 2],
  ])("from %s to %s or its beginning there are %d", (typed, other, count) =>
    expect(slips(typed, other, most)).toBe(count),
  );

  // Boytsov (2011), ACM Journal of Experimental Algorithmics 16: the optimal string alignment distance of "ca" and
  // "abc" is 3, since what was changed about is not touched again; of the beginning "a" it is 1.
  it("does not edit twice what was changed about", () => expect(slips("ca", "abc", most)).toBe(1));

  it("lies between half of Levenshtein's distance and the whole of it", () =>
    fc.assert(
      fc.property(word, word, (typed, other) => {
        const found = slips(typed, other, most);
        const bound = toBeginning(typed, other);
        expect(found).toBeLessThanOrEqual(bound);
        expect(2 * found).toBeGreaterThanOrEqual(bound);
      }),
    ));

  it("is one more than the most that are allowed, where there are more", () =>
    expect(slips("thwale", "estrow", 2)).toBe(3));

  it("are allowed in longer words only, and in no number", () =>
    expect(["oak", "lamp", "thwales", "blowpipe", "s1241"].map(slipsIn)).toEqual([0, 1, 1, 2, 0]));
});

describe("the nearest words", () => {
  const words = ["quernby", "quernbys", "querying", "thwale", "marchby", "1905"];

  it("are those with the fewest slips, the shorter first", () =>
    expect(nearWords("qurenby", words)).toEqual(["quernby", "quernbys"]));

  it("are none where nothing is near, and for a number", () => {
    expect(nearWords("zzzzzz", words)).toEqual([]);
    expect(nearWords("1906", words)).toEqual([]);
  });

  it("are found however the letters are skipped beforehand", () =>
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("a", "b", "c", "d"), minLength: 4, maxLength: 9 }),
        fc.uniqueArray(word, { minLength: 1, maxLength: 20 }),
        (typed, others) => {
          const counts = others.map((other) => slips(typed, other, most)).filter((count) => count > 0);
          const least = Math.min(...counts);
          const expected = others.filter((other) => slips(typed, other, most) === least);
          const found = nearWords(typed, others, 100);
          if (least > slipsIn(typed)) expect(found).toEqual([]);
          else expect([...found].sort()).toEqual([...expected].sort());
        },
      ),
    ));
});
