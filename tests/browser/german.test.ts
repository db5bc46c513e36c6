import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Files, writeCollection } from "../collections/collection.ts";
import { germanCollection } from "../collections/german-collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { run } from "../commands/run.ts";
import { type OpenSite, openSite } from "./open-site.ts";
import { overlappingTexts } from "./seen-on-page.ts";

const longWord = (word: string): string =>
  `${word}verwahrungsgerätschaftsbeschreibungsausschuss`.slice(0, 44);

/** The same collection with a word of 44 letters wherever one may write, in the wider of the typefaces. */
function withLongWords(files: Files): Files {
  const said =
    /\b(name|title|container-title|maker|holder|from|place|event|evidence|note|look|where|caption|alt|condition|publisher|abstract|description|notice|words): (?!\d)(\p{L}+)/gu;
  const kept = /(?<=[ [])(?:flach|rund|holz|horn|schnur|fensterglas)(?=[\], }])/g;
  const lengthened = (text: string) =>
    text
      .replace(said, (_, field: string, word: string) => `${field}: ${longWord(word)}`)
      .replace(kept, (id) => `${id}-verwahrungsgeraetschaftsbeschreibungsaus`.slice(0, 44))
      .replace("KAI OSTMARK", longWord("Kai"))
      .replace("*siebte*", longWord("siebte"));
  const theme = "theme: { reading: source-serif, data: source-sans }\n";
  return Object.fromEntries(
    Object.entries(files).map(([file, text]) => [
      file,
      typeof text !== "string" ? text : lengthened(text) + (file === "content/collection.yaml" ? theme : ""),
    ]),
  );
}

describe.each([
  ["the longer words of German", germanCollection()],
  ["words of 44 letters", withLongWords(germanCollection())],
])("%s", (_, files) => {
  let site: OpenSite;
  let out: string;

  beforeAll(async () => {
    const root = writeCollection(files);
    out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-german-")), "site");
    const built = await run(["build", "--root", root, "--out", out], root);
    expect(built.code, built.err + built.out).toBe(0);
    site = await openSite(out);
  });
  afterAll(() => site.close());

  it("have room on the smallest screen, on every page", async () => {
    const page = await site.visit("/", { viewport: { width: 320, height: 800 } });
    const faults: string[] = [];
    const pages = [...siteFiles(out)].filter(
      ([file, bytes]) => file.endsWith("index.html") && !bytes.includes('http-equiv="refresh"'),
    );
    for (const [file] of pages) {
      await page.goto(`${site.url}/${file.replace("index.html", "")}`);
      if ((await page.evaluate(() => document.documentElement.scrollWidth)) > 320)
        faults.push(`${file} scrolls`);
      for (const pair of await overlappingTexts(page)) faults.push(`${file} ${pair}`);
    }
    await page.context().close();
    expect(faults).toEqual([]);
    expect(pages.length).toBeGreaterThan(15);
  });
});
