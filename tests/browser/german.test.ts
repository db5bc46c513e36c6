import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
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

  const smallest = { viewport: { width: 320, height: 800 } };
  const pagesOfSite = (): string[] =>
    [...siteFiles(out)].flatMap(([file, bytes]) =>
      file.endsWith("index.html") && !bytes.includes('http-equiv="refresh"')
        ? file.replace("index.html", "")
        : [],
    );
  const scrolls = async (page: Page, address: string): Promise<string[]> => {
    await page.goto(`${site.url}/${address}`);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    return width > 320 ? [`${address} scrolls`] : [];
  };

  it("have room on the smallest screen, on every page", async () => {
    const page = await site.blank(smallest);
    const faults: string[] = [];
    const pages = pagesOfSite();
    for (const file of pages) {
      faults.push(...(await scrolls(page, file)));
      for (const pair of await overlappingTexts(page)) faults.push(`${file} ${pair}`);
    }
    await page.context().close();
    expect(faults).toEqual([]);
    expect(pages.length).toBeGreaterThan(15);
  });

  // A face that comes late is not used at all (font-display: optional).
  it("have room in the type of the system as well", async () => {
    const page = await site.blank(smallest);
    await page.route("**/*.woff2", (route) => route.abort());
    const faults: string[] = [];
    for (const address of pagesOfSite()) faults.push(...(await scrolls(page, address)));
    await page.context().close();
    expect(faults).toEqual([]);
  });
});
