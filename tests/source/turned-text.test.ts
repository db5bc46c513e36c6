import { expect, it } from "vitest";
import { turnedText } from "../../shared/source/turned-text.ts";

// The characters are those of UAX #9, sections 2.1 to 2.3: 8238 is 202E, and 8297 is 2069.
it.each([
  ["a.md", "title: \u202eOne", "U+202E", 8],
  ["a.md", 'title: "One \\u202eeno"', "U+202E", 13],
  ["a.yaml", 'title: "One \\U00002066eno"', "U+2066", 13],
  ["a.json", '{ "title": "One \\u202A" }', "U+202A", 17],
  ["a.md", "One &#8238;eno", "U+202E", 5],
  ["a.md", "One &#x2069;eno", "U+2069", 5],
  ["a.md", "One &#08297;eno", "U+2069", 5],
])("in %s, %j turns the text with %s", (file, text, code, column) => {
  expect(turnedText(file, text)).toEqual([
    expect.objectContaining({
      code: "turned-text",
      column,
      found: expect.stringMatching(`^${code.replace("+", "\\+")},`),
    }),
  ]);
});

it.each([
  ["a.md", 'title: "One \\\\u202e"'],
  ["a.md", "title: One \\u202e"],
  ["a.md", "One &#8206; and &#x200F;"],
  ["a.csv", '2001,"\\u202e"'],
])("in %s, %j turns nothing", (file, text) => {
  expect(turnedText(file, text)).toEqual([]);
});
