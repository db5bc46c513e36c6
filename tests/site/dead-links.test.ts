import { rmSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { buildCollection } from "../../shared/site/build-collection.ts";
import { loadCollection } from "../../shared/site/load-collection.ts";
import { type Files, smallCollection, writeCollection } from "../collections/collection.ts";

const item = (variant: string, text: string, more = "") =>
  `---\ntitle: An outfit\nvariant: ${variant}\n${more}---\n${text}\n`;

/** Two families, each with an outfit, that know nothing of one another. */
const files = (ofFirst: string, more: Files = {}): Files => ({
  ...smallCollection("parts: { key: { name: Key } }\n"),
  "schemas/reference/trunk/family.yaml": "name: Trunks\n",
  "schemas/reference/trunk/trunk-a.yaml": "name: Trunk A\nparts: { key: { name: Key } }\n",
  "content/items/one/index.md": item("chest-a", ofFirst),
  "content/items/other.md": item("trunk-a", "Like [the chest](../one/).", "formerly: [old-trunk]\n"),
  ...more,
});

const dead = (root: string) =>
  loadCollection(root).diagnostics.flatMap(({ code, file, found, remedy }) =>
    code === "dead-link" ? [`${file}: ${found} ${remedy ?? ""}`.trim()] : [],
  );

const warningsBuilt = async (root: string) =>
  (await buildCollection(root, path.join(root, "_site"), "public")).written?.warnings;

describe("a link in a text", () => {
  it("may lead to any page of the site, by any way that leads there", () => {
    const ways = [
      "../other/",
      "../other",
      "../../items/other/index.html",
      "../../../items/other/#parts",
      "/items/other/",
      "../old-trunk/",
      "../../variants/trunk-a/",
      "../../families/trunk/",
      "../../sources/#ledger",
      "../../methods/",
      "../by/family/trunk/page/2/",
      "#part-key",
      "https://example.org/items/none/",
      "mailto:a@example.org",
    ];
    expect(dead(writeCollection(files(ways.map((way) => `[x](${way})`).join(" "))))).toEqual([]);
  });

  it("that leads nowhere is warned of, with the page that was meant", () => {
    const texts = ["../othr/", "../../content/items/other.md", "../../famlies/trunk/", "/nowhere/", "tel:1"];
    const told = dead(writeCollection(files(texts.map((way) => `[x](${way})`).join(" "))));
    const say = 'content/items/one/index.md: "';
    expect(told).toEqual([
      `${say}../othr/", which leads to no page Did you mean "../../items/other/"?`,
      `${say}../../content/items/other.md", which leads to no page Did you mean "../../items/other/"?`,
      `${say}../../famlies/trunk/", which leads to no page Did you mean "../../families/trunk/"?`,
      `${say}/nowhere/", which leads to no page`,
      `${say}tel:1", of which no link is made`,
    ]);
  });

  it("is looked at in the description of a variant, a family and the collection, too", () => {
    const root = writeCollection(
      files("", {
        "content/collection.yaml": "title: T\ndescription: See [one](items/one/) and [two](items/two/).\n",
        "schemas/reference/trunk/family.yaml": "name: Trunks\ndescription: Not [chests](../chests/).\n",
        "schemas/reference/trunk/trunk-a.yaml":
          "name: Trunk A\nparts: { key: { name: Key } }\nnote: As ![seen](a.jpg).\n",
      }),
    );
    expect(dead(root).map((told) => told.replace(/,.*/, ""))).toEqual([
      'content/collection.yaml: "items/two/"',
      'schemas/reference/trunk/family.yaml: "../chests/"',
      'schemas/reference/trunk/trunk-a.yaml: "a.jpg"',
    ]);
  });

  it("is counted by a build as by a check, also where another family has changed", async () => {
    const root = writeCollection(files("Unlike [the trunk](../other/) and [none](../none/)."));
    const checked = () =>
      loadCollection(root).diagnostics.filter(({ severity }) => severity === "warning").length;
    expect(dead(root)).toHaveLength(1);
    expect(await warningsBuilt(root)).toBe(checked());
    rmSync(path.join(root, "content/items/other.md"));
    expect(dead(root)).toHaveLength(2);
    expect(await warningsBuilt(root)).toBe(checked());
  }, 60_000);
});
