import { describe, expect, it } from "vitest";
import { remarksInARow } from "../../shared/words/ended.ts";

describe("remarks in a row", () => {
  it.each([
    [["61", "Fine"], "61. Fine"],
    [["61", "T.S.V.", "Fine"], "61. T.S.V. Fine"],
    [["Is it the lamp?", "“Lamp.”", "Worn"], "Is it the lamp? “Lamp.” Worn"],
    [["New brass.", "Numbers match."], "New brass. Numbers match."],
    [[], ""],
  ])("%j is %s: what has its end gets no second one", (remarks, text) => {
    expect(remarksInARow(remarks)).toBe(text);
  });
});
