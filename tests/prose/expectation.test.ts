import { describe, expect, it } from "vitest";
import { claimSuggestion, expectationFrom, holds } from "../../shared/prose/expectation.ts";

const claim = (line: string) => {
  const expectation = expectationFrom(line);
  if (!expectation) throw new Error(`"${line}" is no expectation.`);
  return expectation.claim;
};

describe("an assertion", () => {
  it.each([
    ["a/b at least 20", 20, true],
    ["a/b at least 20", 19.99, false],
    ["a/b at most 20", 20, true],
    ["a/b at most 20", 20.01, false],
    ["a/b between 0.7 and 0.9", 0.9, true],
    ["a/b between 70% and 90%", 0.69, false],
    // As many decimals as were written decide.
    ["a/b equals 26", 26.14, true],
    ["a/b equals 26.1", 26.14, true],
    ["a/b equals 26.14", 26.2, false],
    ["a/b equals 64%", 0.638, true],
    ["a/b equals 64%", 0.634, false],
    ["a/b at least 40 %", 0.4, true],
    ["a/b between 70\u00a0% and 90\u00a0%", 0.69, false],
    ["a/b equals 0.64", 0.64, true],
    ["a/b equals -3", -3, true],
    ["a/b is confirmed", "confirmed", true],
    ["a/b is confirmed", "contradicted", false],
    ["a/b withheld", null, true],
    ["a/b withheld", 3, false],
    // What is withheld is neither more nor less than anything.
    ["a/b at least 20", null, false],
    ["a/b at most 20", null, false],
  ])("%s, found %s: %s", (line, value, expected) => {
    expect(holds(value, claim(line))).toBe(expected);
  });

  it.each([
    "",
    "a/b",
    "a/b atleast 20",
    "a/b at least",
    "a/b at least many",
    "a/b between 1 and",
    "a/b equals 1 2",
  ])("refuses %j", (line) => {
    expect(expectationFrom(line)).toBeNull();
  });

  it("suggests the words that were meant", () => {
    expect(claimSuggestion("a/b at-least 20")).toBe('Did you mean "at least"?');
    expect(claimSuggestion("a/b equal 20")).toBe('Did you mean "equals"?');
    expect(claimSuggestion("a/b betwen 2 and 3")).toBe('Did you mean "between … and …"?');
    expect(claimSuggestion("a/b rhubarb")).toBeUndefined();
  });
});
