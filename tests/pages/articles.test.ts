import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { withArticle } from "../collections/article.ts";
import { writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const text = `
Of <figure:variants/chest-a/made> made, <figure:variants/chest-a/survivors/value> survive: more exactly
<figure:variants/chest-a/survivors>, and again <figure:variants/chest-a/survivors>. On record are
<figure:variants/chest-a/distinct>, with jets <figure:variants/chest-a/parts/jet/value>. One has
<figure:items/one/completeness>. Of the others: <figure:variants/chest-b/survivors/insufficient> Braces {{ stay }}.

As the ledger has it [@ledger, p. 31]; otherwise [@venn-2009, pp. 3-5; @venn-2010a] [@venn-2010b].

<table:variants/chest>

- A list, and ![a picture of <figure:variants/chest-a/made>](open.jpg), [linked <figure:variants/chest-a/made>](/sources/)
- \`<figure:variants/chest-a/made>\`

<table:items?variant=chest-a&show=completeness,parts/jet>

<plot:variants/chest-a/sightings>

<plot:variants/chest-a/serials>

\`\`\`expect
variants/chest-a/distinct equals 6
\`\`\`
`;

let site = "";
const page = (address: string) => readFileSync(path.join(site, address, "index.html"), "utf8");
const data = (address: string) => readFileSync(path.join(site, address), "utf8");
/** What a reader reads: the main text without its markup. */
const readable = (html: string) =>
  html
    .slice(html.indexOf("<main"), html.indexOf("</main>"))
    .replace(/<svg[\s\S]*?<\/svg>/g, "")
    .replace(/<[^>]*>/g, "")
    .replace(/\s+/g, " ");

beforeAll(async () => {
  const root = writeCollection(withArticle(text));
  const { code, err } = await runHere(["build"], root);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  site = path.join(root, "_site");
});

describe("a sentence that carries a figure", () => {
  it("says it in the words of every page, with its note a step away", () => {
    const html = page("/articles/chests/");
    const survivors = /id="survivors">.*?<span class="phrase">([^<]*)</s.exec(
      page("/variants/chest-a/"),
    )?.[1];
    expect(survivors).toMatch(/^about /);
    const said = readable(html);
    // By hand: D + f1(f1 - 1)/(2(f2 + 1)) = 6 + 2/10 = 6.2 (Chao 1987); two of four have jets.
    expect(said).toContain("Of 40, note 1 made, 6, note 2 survive: more exactly");
    expect(said).toContain(
      `${survivors}, note 2, and again ${survivors}, note 2. On record are 6, with jets 50%, note 3.`,
    );
    // By hand: the key is there and the jet is not, each of weight 1.
    expect(said).toContain("One has 50%, note 4.");
    expect(said).toContain("A list, and a picture of 40, note 1, linked 40");
    expect(said).toContain("Of the others: No sighting is recorded., note 5 Braces {{ stay }}.");
    expect(html).toContain('<a class="told" href="../../sightings/chest-a/"><span>6</span></a>');
  });

  it("lists at the end what each figure rests on, once, with the ways back", () => {
    const html = page("/articles/chests/");
    expect([...html.matchAll(/<li id="basis-(\d)">/g)].map(([, number]) => number)).toEqual([
      "1",
      "2",
      "3",
      "4",
      "5",
    ]);
    const note = /<li id="basis-2">.*?<\/li>/s.exec(html)?.[0] ?? "";
    expect(note).toContain('href="../../methods/#chao1"');
    expect(readable(`<main>${note}</main>`)).toMatch(/examples 6, seen once 2, seen twice 4, sightings 10/);
    expect([...note.matchAll(/href="#(told-[^"]*)"/g)].map(([, place]) => place)).toEqual([
      "told-2",
      "told-2-2",
      "told-2-3",
    ]);
    for (const [, place] of note.matchAll(/href="#(told-[^"]*)"/g)) expect(html).toContain(`id="${place}"`);
  });

  it("prints the words alone where no link may be: in links and code", () => {
    const html = page("/articles/chests/");
    expect(html).toContain('<a href="../../sources/">linked 40</a>');
    expect(html).toContain("<code>&lt;figure:variants/chest-a/made&gt;</code>");
  });

  it("prints no expectation, and leaves no empty paragraph behind", () => {
    const html = page("/articles/chests/");
    expect(html).not.toContain("equals 6");
    expect(html).not.toMatch(/<p>\s*<\/p>/);
  });
});

describe("what the data put between the words", () => {
  it("compares variants, and outfits chosen by query", () => {
    const said = readable(page("/articles/chests/"));
    expect(said).toMatch(/Chest A ?Chest B ?Features ?Lock ?iron ?brass/);
    expect(said).toMatch(/Outfit ?By weight ?Jet ?A chest ?50% ?missing/);
    expect(said).toContain("1 outfit of this catalogue");
  });

  it("draws, each drawing with ids of its own and a name", () => {
    const html = page("/articles/chests/");
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(html).toContain(
      '<a href="../../variants/chest-a/#sightings">Sightings of Chest A over the years</a>',
    );
    expect(page("/variants/chest-a/")).toContain('id="sightings"');
    expect(page("/variants/chest-a/")).toContain('id="serials"');
  });
});

describe("a citation", () => {
  it("gives author and year, or the title where no person is named, linked to the bibliography of the article", () => {
    const html = page("/articles/chests/");
    const said = readable(html);
    // Author-date, a letter telling apart what would be cited alike: Chicago Manual of Style (17th ed.), 15.20; from memory.
    expect(said).toContain("(Ledger, p.\u00a031)".replace("\u00a0", " "));
    expect(said).toContain("(Venn 2009, pp. 3–5; Venn and Ost 2010a) (Venn and Ost 2010b)");
    expect(html).toContain('<a href="#source-ledger"><cite>Ledger</cite></a>');
    const listed = [...html.matchAll(/<li id="source-([^"]*)">/g)].map(([, id]) => id);
    expect(listed).toEqual(["ledger", "venn-2009", "venn-2010a", "venn-2010b"]);
  });

  it("stands in descriptions too, linked to the sources of the whole site, which tell where they are cited", () => {
    expect(page("/items/one/")).toContain('(<a href="../../sources/#venn-2009">Venn 2009</a>, pp.\u00a03–5)');
    expect(page("/variants/chest-a/")).toContain(
      '(<a href="../../sources/#ledger"><cite>Ledger</cite></a>, p.\u00a031)',
    );
    const sources = page("/sources/");
    const venn = /<li id="venn-2009">.*?<\/li>/s.exec(sources)?.[0] ?? "";
    expect(venn).toContain('<a href="../articles/chests/">On chests</a>');
    expect(venn).toContain('<a href="../items/one/">A chest</a>');
  });
});

describe("cite this page", () => {
  const cited = (html: string) => {
    const unescaped = (markup: string) =>
      markup
        .replaceAll("&quot;", '"')
        .replaceAll("&#39;", "'")
        .replaceAll("&lt;", "<")
        .replaceAll("&amp;", "&");
    const [bibtex = "", csl = ""] = [...html.matchAll(/<pre[^>]*><code>(.*?)<\/code><\/pre>/gs)].map(
      ([, code]) => unescaped(code ?? ""),
    );
    return { bibtex, csl: JSON.parse(csl) as Record<string, unknown>[] };
  };

  it.each([
    ["/items/one/", "/data/items/one.json", "A chest"],
    ["/variants/chest-a/", "/data/variants/chest-a.json", "Chest A"],
    ["/families/chest/", "/data/families/chest.json", "Chests"],
    ["/articles/chests/", "/data/articles/chests.json", "On chests"],
  ])("is on %s, with the fingerprint of its data file", (address, file, title) => {
    const html = page(address);
    const version = createHash("sha256").update(data(file)).digest("hex").slice(0, 12);
    const url = `https://example.org${address}`;
    expect(readable(html)).toContain(`${title}. A test collection.`);
    expect(readable(html)).toContain(`Version ${version}. ${url}`);
    const { bibtex, csl } = cited(html);
    expect(csl).toHaveLength(1);
    expect(csl[0]).toMatchObject({
      type: "webpage",
      title,
      "container-title": "A test collection",
      version,
      URL: url,
    });
    expect(bibtex).toContain(`title = {{${title}}}`);
    expect(bibtex).toContain(`note = {Version ${version}}`);
  });

  it("gives the date of the record's last revision, and none where none is known", () => {
    // CSL 1.0.2, csl-data.json: date-parts are an array of arrays of numbers.
    expect(cited(page("/articles/chests/")).csl[0]).toMatchObject({
      issued: { "date-parts": [[2026, 3, 20]] },
      author: [{ literal: "Ida Venn" }],
    });
    expect(cited(page("/items/one/")).bibtex).toMatch(/year = \{2026\},\n {2}month = mar/);
    expect(cited(page("/variants/chest-a/")).csl[0]).not.toHaveProperty("issued");
  });

  it("puts every figure of an article into its data file, to the last digit", () => {
    const article = JSON.parse(data("/data/articles/chests.json")) as { figures: Record<string, unknown> };
    const variant = JSON.parse(data("/data/variants/chest-a.json")) as { rarity: Record<string, unknown> };
    expect(article.figures["variants/chest-a/survivors"]).toEqual(variant.rarity.survivors);
    expect(article.figures["variants/chest-a/distinct"]).toBe(6);
  });
});
