import { beforeAll, describe, expect, it } from "vitest";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { renderPage } from "../../templates/render-page.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { germanCollection } from "../collections/german-collection.ts";

async function pagesOf(root: string): Promise<ReadonlyMap<string, string>> {
  const site = await everyFile(root, "public");
  if ("problems" in site) throw new Error(JSON.stringify(site.problems, null, 2));
  const rendered = site.parts.flatMap(({ files, site: around }) =>
    [...files].flatMap((file) =>
      file.kind === "page" ? [[file.address, renderPage(file.make(), around)] as const] : [],
    ),
  );
  return new Map(rendered.map(([address, html]) => [address, html.replace(/<[^>]*>/g, "")]));
}

// How German writes them: nouns with a capital, "mit" with the dative, "ohne" with the accusative.
describe("sentences that are put together, in German", () => {
  let pages: ReadonlyMap<string, string>;
  beforeAll(async () => {
    const files = germanCollection();
    pages = await pagesOf(
      writeCollection({
        ...files,
        "content/articles/sieben.md":
          "---\ntitle: Sieben\n---\nSie ist zu <figure:items/nummer-7/completeness> vollständig.\n",
      }),
    );
  });

  it("keep the capitals of nouns in the notes of an article", () => {
    const article = pages.get("/articles/sieben/") ?? "";
    expect(article).toContain("Wie vollständig, nach Gewicht");
    expect(article).toMatch(/aus: nach Stückzahl .*, erreichte Stufe /);
  });

  it("say what was there and what was not", () => {
    const log = pages.get("/sightings/laterne-1/") ?? "";
    expect(log).toMatch(/mit allem(?! Übrigen)/);
    expect(log).toContain("mit Kasten, Leuchte, Glas, Riemen; ohne Docht");
    expect(log).toContain("mit Kasten, Leuchte; ohne alles Übrige");
    expect(log).toContain("ohne Glas; mit allem Übrigen");
  });

  it("go from what is sure to what is possible", () => {
    expect(pages.get("/")).toContain("vom Sicheren zum Möglichen");
  });
});

describe("what a likeness rests on", () => {
  it.each([
    ["en", "parts: { p: present }", "By 1 part known of both;"],
    ["en", "features: { lock: iron }", "By 1 feature known of both;"],
    ["de", "parts: { p: present }", "Nach 1 Teil, das von beiden bekannt ist"],
    [
      "de",
      "features: { lock: iron }\nparts: { p: present }",
      "Nach 1 Merkmal und 1 Teil, die von beiden bekannt sind",
    ],
  ])("names no kind of which there is nothing (%s, %j)", async (language, known, says) => {
    const root = writeCollection(
      smallCollection("parts: { p: {} }\n", {
        "content/collection.yaml": `title: T\nurl: https://example.org/\nlanguage: ${language}\n`,
        "content/items/one.md": item(`${known}\n`),
        "content/items/two.md": item(`${known}\n`),
      }),
    );
    const pages = await pagesOf(root);
    expect([...pages].find(([address]) => address.startsWith("/compare/one"))?.[1]).toContain(says);
  });
});
