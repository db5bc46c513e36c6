import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { smallCollection, writeCollection } from "../collections/collection.ts";

const sources = (...ids: string[]) =>
  ids.map((id) => `- { id: ${id}, type: book, title: "Of ${id}" }\n`).join("");
/** More of one author and one year than there are letters. */
const alike = Array.from({ length: 28 }, (_, at) => at);

let site: string;
beforeAll(async () => {
  const root = writeCollection(
    smallCollection(
      "description: As [@text] says.\nsources: [text, ann-0, ann-25, ann-26, ann-27]\nparts:\n  lamp: { name: Lampe, hazards: [flammable] }\n",
      {
        "content/collection.yaml": "title: T\nurl: https://example.org/below/a/path/\nlanguage: de\n",
        // Named like what every page has, and like one another's titles.
        "content/sources.yaml": `${sources("text", "main", "text-title")}${alike
          .map(
            (at) =>
              `- { id: ann-${at}, type: book, title: "Nr. ${String(at).padStart(2, "0")}", author: [{ family: Ann }], issued: "1921" }\n`,
          )
          .join("")}`,
        "schemas/reference/text/family.yaml": "name: Texte\n",
        "schemas/reference/text/text-a.yaml": "name: Text A\nparts: { page: { name: Seite } }\n",
        "schemas/reference/text-title/family.yaml": "name: Titel\n",
        "content/items/one.md":
          "---\ntitle: Eine Truhe\nvariant: chest-a\nparts: { lamp: present }\n---\nWorte.\n",
      },
    ),
  );
  site = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-anchors-")), "site");
  await buildSite(root, site, "public");
}, 60_000);

const page = (address: string) => readFileSync(path.join(site, address, "index.html"), "utf8");

describe("a place on a page", () => {
  it("has an id of its own, whatever records are called", () => {
    const pages = readdirSync(site, { recursive: true, encoding: "utf8" }).filter((name) =>
      name.endsWith(".html"),
    );
    expect(pages.length).toBeGreaterThan(10);
    for (const name of pages) {
      const ids = [...readFileSync(path.join(site, name), "utf8").matchAll(/ id="([^"]*)"/g)].map(
        ([, id]) => id,
      );
      expect([name, ids.filter((id, at) => ids.indexOf(id) !== at)]).toEqual([name, []]);
    }
  });

  it("of a source is where its citations lead", () => {
    expect(page("variants/chest-a")).toContain('href="../../sources/#text"');
    expect(page("sources")).toContain('<li id="text">');
    expect(page("families")).toMatch(/<section class="chapter[^"]*" id="text"/);
    expect(page("sources")).toMatch(/<a class="skip" href="#(\w+)">[\s\S]*<main id="\1">/);
  });
});

it("a caution is told by the name of what it is about, in the site's language", () => {
  // schemas/hazards.yaml: flammable, in German.
  const link =
    '<a class="to-caution" href="#caution-flammable">Warnhinweis<span class="unseen">: Brennbare Flüssigkeit</span></a>';
  expect(page("items/one")).toContain(link);
  expect(page("variants/chest-a")).toContain(link);
});

it("sources of one author and year are told apart by a to z, and then by two letters", () => {
  const html = page("variants/chest-a");
  // Titles stand in the order of their numbers: the first is a, the 26th z, and as columns of a spreadsheet go on, aa, ab.
  for (const [at, letter] of [
    [0, "a"],
    [25, "z"],
    [26, "aa"],
    [27, "ab"],
  ] as const)
    expect(html).toContain(`<a href="../../sources/#ann-${at}">Ann 1921${letter}</a>`);
});

it("a host is told of the page for what is not there by its way from the root of the host", () => {
  expect(readFileSync(path.join(site, ".htaccess"), "utf8")).toContain(
    "ErrorDocument 404 /below/a/path/404.html\n",
  );
});
