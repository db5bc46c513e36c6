import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fold } from "../../shared/diagnostics/fold.ts";
import { foldedWords, wordsIn } from "../../shared/pages/search/folded-words.ts";

describe("folding", () => {
  // Decompositions: Unicode Character Database, UnicodeData.txt (compatibility decomposition, NFKD). The letters
  // that have none (ß, æ, ø, ł, đ, þ) as they are commonly typed without them: common practice, no source.
  it.each([
    ["Thwale", "thwale"],
    ["GRÅNDROUS", "grandrous"],
    ["Čapek, Žofín", "capek, zofin"],
    ["Straße", "strasse"],
    ["Tromsø", "tromso"],
    ["Łódź", "lodz"],
    ["Þór", "thor"],
    ["ﬁne Œuvre", "fine oeuvre"],
    ["ｆｕｌｌ", "full"],
    ["S12\u2022\u2022", "s12\u2022\u2022"],
  ])("%s becomes %s", (text, folded) => expect(fold(text)).toBe(folded));

  it("gives the same whether a letter is composed or not", () =>
    expect(fold("e\u0301cole")).toBe(fold("\u00e9cole")));

  it("parts words at whatever is no letter, digit or masked digit", () =>
    expect(wordsIn(fold("The Marchby outfit, no. S12\u2022\u2022 (1905/1912)"))).toEqual([
      "the",
      "marchby",
      "outfit",
      "no",
      "s12\u2022\u2022",
      "1905",
      "1912",
    ]));

  it("of a text as it was written gives the words of the folded text", () =>
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "grapheme" }),
          fc.string({
            unit: fc.constantFrom("a", "É", "e\u0301", "ß", " ", "/", "\u2022", "½", "№", "“", "7", "ﬁ"),
          }),
        ),
        (text) => {
          expect(foldedWords(text)).toEqual(wordsIn(fold(text)));
        },
      ),
    ));
});
