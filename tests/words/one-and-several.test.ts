import { describe, expect, it } from "vitest";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";
import { renderPage } from "../../templates/render-page.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

/** A page in words, as it is printed. */
async function pageOf(address: string, language: string, parts: string, found: string): Promise<string> {
  const files = smallCollection(`parts: ${parts}\n`, {
    "content/collection.yaml": `title: T\nurl: https://example.org/\nlanguage: ${language}\n`,
    "content/items/one.md": item(`examined: 2001-05-06\n${found}\n`),
  });
  const site = await everyFile(writeCollection(files), "public");
  if ("problems" in site) throw new Error(JSON.stringify(site.problems));
  for (const { files: pages, site: around } of site.parts) {
    for (const file of pages) {
      if (file.kind === "page" && file.address === address) {
        return renderPage(file.make(), around)
          .replace(/<[^>]*>/g, " ")
          .replace(/\s+/g, " ");
      }
    }
  }
  throw new Error(`There is no page at ${address}.`);
}

describe("one is told of as one", () => {
  const alone = ["{ p: {} }", "parts: { p: present }"] as const;
  it.each([
    ["/items/one/", "en", ["1 of 1 unit ", "no other is recorded part by part"]],
    ["/items/one/", "de", ["kein anderes ist Teil für Teil erfasst"]],
    ["/variants/chest-a/", "en", ["1 unit of 1 kind.", "1 sighting of 1 example, on 6 May 2001."]],
    ["/variants/chest-a/", "de", ["1 Stück in 1 Art.", "1 Nachweis von 1 Exemplar, am 6. Mai 2001."]],
    ["/items/", "en", ["One outfit gone through part by part."]],
    ["/", "en", ["1 outfit of 1 variant, 0 sightings in the log, 0 sources."]],
  ])("on %s (%s)", async (address, language, says) => {
    const page = await pageOf(address, language, ...alone);
    for (const each of says) expect(page).toContain(each);
  });

  it("in the years that are documented", () => {
    const [en, de] = [english.pages.item.documented, german.pages.item.documented];
    expect([en(1, null), en(1, 119), en(2, 119), en(1, 1), en(0, 1)]).toEqual([
      "1 calendar year is documented.",
      "1 of its 119 calendar years is documented.",
      "2 of its 119 calendar years are documented.",
      "Its one calendar year is documented.",
      "Its one calendar year is not documented.",
    ]);
    expect([de(1, null), de(1, 119), de(2, 119)]).toEqual([
      "1 Kalenderjahr ist belegt.",
      "1 seiner 119 Kalenderjahre ist belegt.",
      "2 seiner 119 Kalenderjahre sind belegt.",
    ]);
  });

  it("in what else there is", () => {
    expect(english.pages.finder.found(1, 1)).toBe("The one outfit");
    expect(german.pages.finder.found(1, 1)).toBe("Die eine Garnitur");
    expect(german.pages.item.andMore(1)).toBe("1 weiteres");
    expect(german.pages.item.andMore(2)).toBe("2 weitere");
    expect(german.pages.sources.andMore(1)).toBe("1 weitere Seite");
  });
});

describe("several units of a part agree with what is said of them", () => {
  const parts =
    "{ fork: { name: Fork, quantity: 6, accepts: [{ model: brass-fork, credit: 0.5 }] }, bow: {}, key: {} }";
  const several =
    "parts: { fork: [{ state: present, quantity: 2 }, { state: absent, quantity: 2 }, { state: substitute, model: brass-fork, quantity: 2 }], key: absent }";
  const single =
    "parts: { fork: [{ state: present, quantity: 4 }, { state: absent }, { state: substitute, model: brass-fork }] }";

  it("in English", async () => {
    const page = await pageOf("/items/one/", "en", parts, several);
    expect(page).toContain("2 present, 2 substitutes, 2 missing");
    expect(page).toContain("Two substitutes, model: brass fork");
    expect(await pageOf("/items/one/", "en", parts, single)).toContain("4 present, 1 substitute, 1 missing");
  });

  it("in German, where Teil is neuter", async () => {
    const page = await pageOf("/items/one/", "de", parts, several);
    expect(page).toContain("2 vorhanden, 2 ersetzt, 2 fehlen");
    expect(page).toContain("Zwei fehlen");
    const ofOne = await pageOf("/items/one/", "de", parts, single);
    expect(ofOne).toContain("4 vorhanden, 1 ersetzt, 1 fehlt");
    expect(ofOne).toContain("Eines fehlt");
  });

  // "2 of 6" may be those gone and those replaced: each time it says which.
  it("and say of how many of them", async () => {
    const page = await pageOf("/items/one/", "en", parts, several);
    expect(page).toContain("Fork (2 of 6 gone)");
    expect(page).toContain("Incomplete Fork 2 present, 2 substitutes, 2 missing");
    expect(page).toContain("Fork (2 of 6 replaced)");
    const inGerman = await pageOf("/items/one/", "de", parts, several);
    expect(inGerman).toContain("Fork (2 von 6 fehlen)");
    expect(await pageOf("/items/one/", "de", parts, single)).toContain("Fork (1 von 6 fehlt)");
  });

  // Of the bow nobody knows; the key is known to be gone.
  it("and do not call missing what nobody looked at", async () => {
    const page = await pageOf("/items/one/", "en", parts, several);
    expect(page).toMatch(/bow not examined 0 to 1 /i);
    expect(page).toMatch(/key missing 0 /i);
  });
});
