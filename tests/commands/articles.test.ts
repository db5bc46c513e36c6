import { describe, expect, it } from "vitest";
import { withArticle } from "../collections/article.ts";
import { type Files, writeCollection } from "../collections/collection.ts";
import { runHere } from "./run-here.ts";

interface Told {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endColumn: number;
  readonly code: string;
  readonly severity: string;
  readonly message: string;
}

/** What `check` says of the texts of a collection; warnings of the records are another matter. */
async function told(files: Files): Promise<{ code: number | null; found: Told[] }> {
  const { code, out } = await runHere(["check", "--format", "json"], writeCollection(files));
  const { diagnostics } = JSON.parse(out) as { diagnostics: Told[] };
  return {
    code,
    found: diagnostics.filter(({ file, severity }) => severity === "error" || file.includes("articles")),
  };
}

const ofArticle = (text: string) => told(withArticle(text));
/** The front matter of the article has five lines. */
const places = (found: readonly Told[]) =>
  found.map(
    ({ file, line, column, code }) =>
      `${file.replace("content/articles/", "")}:${line - 5}:${column} ${code}`,
  );

describe("check, of an article", () => {
  it("finds nothing in one whose every reference is there", async () => {
    const { code, found } = await ofArticle(
      [
        "Of <figure:variants/chest-a/made> made, <figure:variants/chest-a/survivors> survive; in all",
        "<figure:variants/chest-a/distinct>, of them <figure:variants/chest-a/parts/jet> with jets, and",
        "<figure:variants/chest-a/levels/whole/survivors>. <figure:items/one/completeness>, place",
        "<figure:items/one/rank> [@ledger, p. 31; @venn-2009]. <figure:variants/chest-a/class>",
        "",
        "<table:variants/chest?variant=chest-a,chest-b&show=lock,parts/jet>",
        "",
        "<table:items?variant=chest-a&missing=jet&present=key&show=completeness,parts/jet,features/lock>",
        "",
        "<plot:variants/chest-a/sightings>",
        "",
        "<plot:items/one/case-plan>",
        "",
        "```expect",
        "variants/chest-a/distinct equals 6",
        "variants/chest-a/parts/jet/value equals 50%",
        "variants/chest-a/survivors/value between 6 and 7",
        "items/one/verdict is confirmed",
        "variants/chest-b/survivors withheld",
        "```",
        "",
      ].join("\n"),
    );
    expect(found).toEqual([]);
    expect(code).toBe(0);
  });

  it("says at which line and column a reference leads nowhere, and what was meant", async () => {
    const { code, found } = await ofArticle(
      [
        "There are <figure:variants/chest-a/survivers>, and <figure:variants/chst-a/made>.",
        "- Of jets <figure:variants/chest-a/parts/jett>; <figure:variants/chest-a/levels/hole/share>",
        "- <figure:items/won/completeness> and <figure:variants/chest-a> [@venn-2009; @vent-2009, p. 3]",
        "",
        "> <figur:variants/chest-a/made>",
        "",
        "<table:variants/chests>",
        "",
        "<table:items?missing=jett>",
        "",
        "<table:items?mising=jet>",
        "",
        "<plot:variants/chest-a/sighting>",
        "",
        "<plot:items/one/custody>",
        "",
        "Here <plot:variants/chest-a/sightings> stands in a sentence. [@]",
        "",
      ].join("\n"),
    );
    expect(code).toBe(1);
    expect(places(found)).toEqual([
      "chests.md:1:11 unknown-figure",
      "chests.md:1:52 unknown-figure",
      "chests.md:2:11 unknown-figure",
      "chests.md:2:49 unknown-figure",
      "chests.md:3:3 unknown-figure",
      "chests.md:3:39 unknown-figure",
      "chests.md:3:78 unknown-source",
      "chests.md:5:3 unknown-figure",
      "chests.md:7:1 unknown-table",
      "chests.md:9:1 unknown-table",
      "chests.md:11:1 unknown-table",
      "chests.md:13:1 unknown-plot",
      "chests.md:15:1 unknown-plot",
      "chests.md:17:6 misplaced-reference",
    ]);
    const said = found.map(({ message }) => message);
    expect(said[0]).toContain('Did you mean "survivors"?');
    expect(said[1]).toContain('Did you mean "chest-a"?');
    expect(said[2]).toContain('Did you mean "jet"?');
    expect(said[3]).toContain('Did you mean "whole"?');
    expect(said[4]).toContain("Known: one.");
    expect(said[5]).toContain("made");
    expect(said[6]).toContain('Did you mean "venn-2009"?');
    expect(said[7]).toContain('Did you mean "figure:"?');
    expect(said[8]).toContain('Did you mean "chest"?');
    expect(said[9]).toContain('Did you mean "jet"?');
    expect(said[10]).toContain('Did you mean "missing"?');
    expect(said[11]).toContain('Did you mean "sightings"?');
    expect(found[0]).toMatchObject({ endColumn: 11 + "<figure:variants/chest-a/survivers>".length });
  });

  it("reports the sentence that the data overturn", async () => {
    const { code, found } = await ofArticle(
      [
        "Text.",
        "",
        "```expect",
        "# the log grew",
        "variants/chest-a/distinct at least 20",
        "  variants/chest-a/parts/jet/value at most 40%",
        "items/one/verdict is contradicted",
        "variants/chest-b/survivors/value at least 1",
        "variants/chest-a/survivors withheld",
        "variants/chest-a/survivors at least 1",
        "variants/chest-a/distinct atleast 3",
        "variants/chest-a/distnct at least 3",
        "```",
        "Asked how many survive: <figure:variants/chest-a/survivors/insufficient>",
        "",
      ].join("\n"),
    );
    expect(code).toBe(1);
    expect(places(found)).toEqual([
      "chests.md:5:1 overturned",
      "chests.md:6:3 overturned",
      "chests.md:7:1 overturned",
      "chests.md:8:1 overturned",
      "chests.md:9:1 overturned",
      "chests.md:10:1 wrong-expectation",
      "chests.md:11:1 wrong-expectation",
      "chests.md:12:1 unknown-figure",
      "chests.md:14:25 overturned",
    ]);
    const said = found.map(({ message }) => message);
    expect(said[0]).toBe("Found 6; expected at least 20. Rewrite the sentence, or the expectation.");
    expect(said[1]).toContain("Found 50%; expected at most 40%");
    expect(said[2]).toContain('Found "confirmed"; expected "contradicted"');
    expect(said[3]).toContain("No sighting is recorded");
    expect(said[5]).toContain('Add "/value"');
    expect(said[6]).toContain('Did you mean "at least"?');
    expect(said[7]).toContain('Did you mean "distinct"?');
  });

  it("tells a line that can never be true from one that is true no longer", async () => {
    const { found } = await ofArticle(
      [
        "```expect",
        "items/one/verdict is confirmd",
        'items/one/verdict is "confirmed"',
        "variants/chest-a/distinct between 20 and 3",
        "variants/chest-a/parts/jet/value at least 40",
        "variants/chest-a/parts/jet/value between 0.2 and 120%",
        "items/one/completeness/level/sure is hole",
        // One in two of those of which it is recorded: a claim of more decimals is told in as many as it takes.
        "variants/chest-a/parts/jet/value at least 50.01%",
        "variants/chest-a/survivalRate/low at least 90%",
        "```",
      ].join("\n"),
    );
    expect(places(found)).toEqual([
      "chests.md:2:1 wrong-expectation",
      "chests.md:4:1 wrong-expectation",
      "chests.md:5:1 wrong-expectation",
      "chests.md:6:1 wrong-expectation",
      "chests.md:7:1 wrong-expectation",
      "chests.md:8:1 overturned",
      "chests.md:9:1 overturned",
    ]);
    const said = found.map(({ message }) => message);
    expect(said[0]).toBe(
      'Found "confirmd"; expected "confirmed" or "consistent" or "contradicted". Did you mean "confirmed"?',
    );
    expect(said[1]).toContain('Write "between 3 and 20".');
    expect(said[2]).toContain(
      'Found "at least 40"; expected a share, from 0% to 100%. Write "at least 40%".',
    );
    expect(said[3]).toBe('Found "between 0.2 and 120%"; expected a share, from 0% to 100%.');
    expect(said[4]).toContain('Did you mean "whole"?');
    expect(said[5]).toContain("Found 50%; expected at least 50.01%.");
    // Six examples of forty that were made are on record, and not all of forty can be proved to survive.
    expect(said[6]).toMatch(/^Found \d\d?%; expected at least 90%\./);
  });

  // Whole ones were offered in 2001, 2003 and 2006, of nine years: 3/9. Of three events at least 0.6187 are expected
  // (Garwood 1936, table for 95%), which makes 0.0687 in a year.
  it("says of a fraction what it is, and not that it is nothing", async () => {
    const lines = ["appearance/value withheld", "appearance/value at least 2", "appearance/low withheld"];
    const { found } = await ofArticle(
      ["```expect", ...lines.map((line) => `variants/chest-a/levels/whole/${line}`), "```"].join("\n"),
    );
    expect(found.map(({ message }) => message.replace(/; expected.*/, ""))).toEqual([
      "Found 0.33",
      "Found 0.33",
      "Found 0.07",
    ]);
  });

  it("says how a reference is written that cannot be read as one, instead of printing it", async () => {
    const { found } = await ofArticle(
      [
        "Of <figure: variants/chest-a/made> and <figure:variants/chest-a/made, and <figure variants/chest-a/once>.",
        "<table:variants/chest?variant=chest-a, chest-b&show=lock>",
        "Both [@ledger, @venn-2009, p. 3], [see @ledger, p. 3], [@ledger p. 3], a note[^1], [@ledger; venn-2009].",
        "An end [@venn-2009, p. 3",
        "",
        "```expects",
        "variants/chest-a/distinct equals 3",
        "```",
        "",
        "[^1]: A note.",
      ].join("\n"),
    );
    const written = /(?:Write|Footnotes) .*$/;
    expect(places(found).map((place, at) => `${place} ${written.exec(found[at]?.message ?? "")}`)).toEqual([
      'chests.md:1:4 wrong-reference Write "<figure:variants/chest-a/made>".',
      'chests.md:1:40 wrong-reference Write "<figure:variants/chest-a/made>".',
      'chests.md:1:75 wrong-reference Write "<figure:variants/chest-a/once>".',
      'chests.md:2:1 wrong-reference Write "<table:variants/chest?variant=chest-a,chest-b&show=lock>".',
      'chests.md:3:35 wrong-reference Write "see [@ledger, p. 3]".',
      'chests.md:3:56 wrong-reference Write "@ledger, p. 3".',
      "chests.md:3:78 wrong-reference Footnotes are not supported: put the words into the text, or write a backslash before the bracket.",
      'chests.md:3:94 wrong-reference Write "@venn-2009".',
      'chests.md:4:8 wrong-reference Write "[@venn-2009]".',
      'chests.md:6:4 wrong-expectation Write "expect".',
      "chests.md:10:1 wrong-reference Footnotes are not supported: put the words into the text, or write a backslash before the bracket.",
    ]);
  });

  it("says of a citation how it is right in everything that is wrong with it", async () => {
    const { found } = await ofArticle(
      "So [as @ledgr says], [see @ledgr p. 3], [also @venn-209 p. 3; @ledgr fol. 2], [@ledgr p. 4], < figre : items/one/rank >.",
    );
    expect(found.map(({ message }) => /Write .*$/.exec(message)?.[0])).toEqual([
      'Write "as [@ledger] says".',
      'Write "see [@ledger, p. 3]".',
      'Write "also [@venn-2009, p. 3; @ledger, fol. 2]".',
      'Write "@ledger, p. 4".',
      'Write "<figure:items/one/rank>".',
    ]);
  });

  it("takes no bracket with an at sign for a citation where the sources cannot be read", async () => {
    const files = withArticle("A letter [to us @anna] and one [@anna, p. 3].\n");
    const { found } = await told({ ...files, "content/sources.yaml": "- { id: ledger\n" });
    expect(found.map(({ file }) => file)).toEqual(["content/sources.yaml"]);
  });

  it("leaves fences of other words alone, and brackets that no reader takes for a footnote", async () => {
    const others = ["exec", "export", "except", "expert", "aspect", "text", "elixir"];
    const { found } = await ofArticle(
      `${others.map((word) => `\`\`\`${word}\nvariants/x equals 3\n\`\`\`\n`).join("\n")}\nOf [^14]C, [^a-z] and x <table: 3 or <figure:\n`,
    );
    expect(found).toEqual([]);
    const meant = ["Expect", "expects", "expected", "exepct", "expct", "expekt", "expect of"];
    const slips = await ofArticle(meant.map((word) => `\`\`\`${word}\na\n\`\`\`\n`).join("\n"));
    expect(slips.found.map(({ code }) => code)).toEqual(meant.map(() => "wrong-expectation"));
  });

  it("leaves brackets and angles alone that are nothing of ours", async () => {
    const { found } = await ofArticle(
      "A < b, <i>, [see @ home], [mail me @nobody], [sic], a[1], \\[^1] `[^1]` <figure> it's < figures of items/2.\n",
    );
    expect(found).toEqual([]);
  });

  it("takes no figure or citation where words are printed as they stand", async () => {
    const files = withArticle("Text.\n");
    const file = "content/articles/chests.md";
    const { found } = await told({
      ...files,
      [file]: String(files[file]).replace(
        "title: On chests",
        'title: "On <figure:variants/chest-a/made> chests"\nabstract: As the ledger has it [@ledger, p. 31].',
      ),
    });
    expect(found.map(({ line, column, code }) => `${line}:${column} ${code}`)).toEqual([
      "2:12 misplaced-reference",
      "3:32 misplaced-reference",
    ]);
  });

  it("warns of a figure that a sentence carries and the evidence does not", async () => {
    const { code, found } = await ofArticle("Of the other <figure:variants/chest-b/survivors> survive.\n");
    expect(code).toBe(0);
    expect(places(found)).toEqual(["chests.md:1:14 figure-withheld"]);
    expect(found[0]?.message).toContain("<figure:variants/chest-b/survivors/insufficient>");
  });

  it("leaves code alone, and everything else that only looks like a reference", async () => {
    const { code, found } = await ofArticle(
      "`<figure:a/b>` `[@nobody]` \\[@nobody] [@name](https://example.org/) <https://example.org/figure:x>\n\n    <figure:a/b>\n\n```\n<table:x> [@nobody]\n```\n",
    );
    expect(found).toEqual([]);
    expect(code).toBe(0);
  });

  it("counts lines the same with CRLF, a byte-order mark and letters of every script", async () => {
    const files = withArticle("Zwölf \u{1F9F0} Kästen, 箱子.\nThen <figure:variants/chest-a/mad>.\n");
    const file = "content/articles/chests.md";
    const text = `\uFEFF${String(files[file]).replaceAll("\n", "\r\n")}`;
    const { found } = await told({ ...files, [file]: text });
    expect(places(found)).toEqual(["chests.md:2:6 unknown-figure"]);
  });

  it("looks into the texts of items, variants and families, and of the collection itself", async () => {
    const files = withArticle("Text.\n");
    const { found } = await told({
      ...files,
      "content/items/one/index.md": `${files["content/items/one/index.md"]}\nMore [@vent-2009].\n\n<table:items>\n`,
      "schemas/reference/chest/chest-a.yaml": String(files["schemas/reference/chest/chest-a.yaml"]).replace(
        "[@ledger",
        "[@ledgr",
      ),
      "schemas/reference/chest/family.yaml": `${files["schemas/reference/chest/family.yaml"]}description: >-\n  One\n  [@venn] and <figure:variants/chest-a/med>.\n`,
      "content/collection.yaml": "title: Chests\ndescription: Of <figure:variants/chest-a/mode>.\n",
    });
    expect(found.map(({ file, line, column, code }) => `${file}:${line}:${column} ${code}`)).toEqual([
      "content/collection.yaml:2:17 unknown-figure",
      "content/items/one/index.md:11:6 unknown-source",
      "content/items/one/index.md:13:1 misplaced-reference",
      "schemas/reference/chest/chest-a.yaml:5:39 unknown-source",
      "schemas/reference/chest/family.yaml:7:3 unknown-source",
      "schemas/reference/chest/family.yaml:7:15 unknown-figure",
    ]);
  });

  it("tells of citations also where the records have errors, and there are no figures yet", async () => {
    const files = withArticle("[@vent-2009] <figure:variants/chest-a/made>\n");
    const { found } = await told({
      ...files,
      "content/items/two.md": "---\ntitle: Two\nvariant: chest-z\n---\n",
    });
    expect(found.map(({ code }) => code)).toEqual(["unknown-source", "unknown-variant"]);
  });

  it("builds nothing of an article that is overturned", async () => {
    const root = writeCollection(
      withArticle("Text.\n\n```expect\nvariants/chest-a/distinct equals 7\n```\n"),
    );
    const { code, err } = await runHere(["build"], root);
    expect(code).toBe(1);
    expect(err).toContain("content/articles/chests.md:9:1  error  overturned");
    expect(err).toContain("Nothing was written.");
  });
});
