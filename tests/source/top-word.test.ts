import { describe, expect, it } from "vitest";
import { topLine, topWord } from "../../shared/source/top-word.ts";

describe("what is seen of YAML at a glance", () => {
  it.each([
    ["title: One\nset: ab-1\n", "ab-1"],
    ['# Of the case.\n\n"title": One\r\n\'set\': "ab-1" # seen\r\n', "ab-1"],
    ["title: One\nphotos:\n- { file: a.png }\nset: ab-1", "ab-1"],
  ])("is a word on the line of its key: %j", (yaml, word) => {
    expect(topWord(yaml, "set")).toBe(word);
  });

  it.each(["", "title: One\n", "title: One\nparts:\n  board: { set: a }\n", 'title: "The \\"one\\""\n'])(
    "is that there is no such key: %j",
    (yaml) => {
      expect(topLine(yaml, "set")).toBeUndefined();
    },
  );

  // Each of these has the key by YAML 1.2, or may have it; only who reads it knows.
  it.each([
    "  title: One\n  set: a\n",
    "{ title: One, set: a }",
    "---\ntitle: One\nset: a\n",
    "title: One\n? set\n: a\n",
    'title: One\n"s\\u0065t": a\n',
    "title: One\n&here set: a\n",
    "title: One\n!!str set: a\n",
    "title: &key set\n*key : a\n",
    "title: One\nset: a\n\n  b\n",
    "title: One\nparts: { board: {\nset: a\n} }\nset: b\n",
  ])("is not to be trusted: %j", (yaml) => {
    expect(topLine(yaml, "set")).toBeNull();
  });
});
