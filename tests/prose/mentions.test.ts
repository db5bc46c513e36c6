import { describe, expect, it } from "vitest";
import { mentionsIn } from "../../shared/prose/mentions.ts";

/** What is found, as it stands in the text: the place is right where the stretch is the reference. */
const stretches = (text: string) => mentionsIn(text).map(({ start, end }) => text.slice(start, end));

describe("what a text takes from the data", () => {
  it("is found in sentences, emphasis, headings, lists, quotations, cells and alternative texts", () => {
    expect(stretches("There are <figure:variants/a/made>, *of <figure:variants/a/once>*.")).toEqual([
      "<figure:variants/a/made>",
      "<figure:variants/a/once>",
    ]);
    expect(stretches("# On <figure:variants/a/made>\n\n- one\n  - two <figure:items/b/rank>\n")).toEqual([
      "<figure:variants/a/made>",
      "<figure:items/b/rank>",
    ]);
    expect(
      stretches("> - said\r\n>   that <figure:variants/a/made>\r\n>   and <figure:x/a/made>\r\n"),
    ).toEqual(["<figure:variants/a/made>", "<figure:x/a/made>"]);
    const row = "| <figure:variants/a/made> | <figure:variants/a/made> \\| [@c] |";
    const table = `| a | b |\n| - | - |\n${row}\n`;
    expect(mentionsIn(table).map(({ start }) => start - table.indexOf(row))).toEqual([
      row.indexOf("<"),
      row.lastIndexOf("<"),
      row.indexOf("[@"),
    ]);
    expect(stretches("![with <figure:variants/a/made>](x.jpg)")).toEqual(["<figure:variants/a/made>"]);
  });

  it("is not looked for in code, nor where it is escaped", () => {
    expect(stretches("`<figure:variants/a/made>` and `[@b]`, \\<figure:a> \\[@b]")).toEqual([]);
    expect(stretches("    <figure:variants/a/made>\n\n```\n[@b] <table:items>\n```\n")).toEqual([]);
    const after = "`<figure:variants/a/made>` <figure:variants/a/made>";
    expect(mentionsIn(after).map(({ start }) => start)).toEqual([after.lastIndexOf("<")]);
  });

  it("leaves links alone: those of CommonMark, and their texts", () => {
    expect(stretches("<https://example.org/> <a@example.org> [@name](https://example.org/)")).toEqual([]);
  });

  it("takes another scheme for a slip where the path could only be ours", () => {
    expect(stretches("<figre:variants/a/made> <urn:isbn:1>")).toEqual(["<figre:variants/a/made>"]);
  });

  // Each is told of with its stretch: were that the rest of the line, they would be 100,000 signs a thousand times.
  it("takes of a line of slips no more than each is long", () => {
    for (const slip of ["<figure:", "<plot:x<", "<figure:items/", "< table : variants? ", "[^", "[a @"]) {
      const line = slip.repeat(Math.ceil(20_000 / slip.length));
      const told = mentionsIn(line).map(({ start, end }) => end - start);
      expect(told.reduce((sum, length) => sum + length, 0)).toBeLessThanOrEqual(line.length);
    }
    const [one] = mentionsIn(`<figure:items/${"x".repeat(1000)}`);
    expect((one?.end ?? 0) - (one?.start ?? 0)).toBeLessThan(250);
  });

  it("takes brackets for a footnote behind words, or where the note is", () => {
    expect(
      stretches("Seen[^1], *so*[^2] and 1850.[^3] of [^14]C in [^a-z] and [^4] x\n\n[^4]: The note."),
    ).toEqual(["[^1]", "[^2]", "[^3]", "[^4]", "[^4]"]);
    // CommonMark takes a note of one word for the address of a link.
    expect(stretches("Seen[^1].\n\n[^1]: Note")).toEqual(["[^1]"]);
  });

  it("parts a citation of several sources, over lines too", () => {
    const text = "As said [@a, p. 31;\n@b-2, pp. 3-5; c].";
    expect(mentionsIn(text).map((each) => each.kind === "citation" && each.cite)).toMatchObject([
      { source: "a", locator: "p. 31" },
      { source: "b-2", locator: "pp. 3-5" },
      { source: "", locator: "" },
    ]);
    expect(stretches(text)).toEqual(["[@a, p. 31", "@b-2, pp. 3-5", "c"]);
    expect(stretches("[@a][@b]")).toEqual(["[@a", "[@b"]);
  });

  it("tells what stands alone from what stands in a sentence", () => {
    const alone = (text: string) => mentionsIn(text).map((each) => each.kind === "reference" && each.alone);
    expect(alone("<table:variants/a>\n\nText <table:variants/a>\n\n> <table:variants/a>\n")).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("reads a block of assertions line by line", () => {
    const text =
      "Text.\n\n```expect\nvariants/a/made/value at least 20\n\n  # a remark\n  variants/a/once equals 3\n```\n";
    expect(stretches(text)).toEqual(["variants/a/made/value at least 20", "variants/a/once equals 3"]);
  });

  it("reads the conditions of a table", () => {
    const [mention] = mentionsIn("<table:items?variant=a,b&missing=jet&missing=rider&show=rank>");
    expect(mention?.kind === "reference" && mention.reference).toMatchObject({
      scheme: "table",
      path: ["items"],
      query: [
        ["variant", ["a", "b"]],
        ["missing", ["jet"]],
        ["missing", ["rider"]],
        ["show", ["rank"]],
      ],
    });
  });
});
