import { readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
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
  checkCollection(root).diagnostics.flatMap(({ code, file, found, remedy }) =>
    code === "dead-link" ? [`${file}: ${found} ${remedy ?? ""}`.trim()] : [],
  );

const warningsBuilt = async (root: string) =>
  (await buildSite(root, path.join(root, "_site"), "public")).written?.warnings;

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
      "../by/family/trunk/",
      "../other/card/",
      "../old-trunk/card/",
      "#part-key",
      "https://example.org/items/none/",
      "mailto:a@example.org",
    ];
    expect(dead(writeCollection(files(ways.map((way) => `[x](${way})`).join(" "))))).toEqual([]);
  });

  it.each([
    ["further in", "  title: An outfit\n  variant: trunk-a\n  formerly: [old-trunk]"],
    ["in braces", "{ title: An outfit, variant: trunk-a, formerly: [old-trunk] }"],
    ["below a question mark", "title: An outfit\nvariant: trunk-a\n? formerly\n: [old-trunk]"],
  ])("may lead to a former address that its record has %s", (_, yaml) => {
    const other = { "content/items/other.md": `---\n${yaml}\n---\n` };
    expect(dead(writeCollection(files("[x](../old-trunk/)", other)))).toEqual([]);
  });

  it("may lead to what photographs and settings have made, however these are written", () => {
    const other = "  title: An outfit\n  variant: trunk-a\n  photos: [{ file: a.png, alt: A }]";
    const odd = {
      "content/items/other/index.md": `---\n${other}\n---\n`,
      "content/collection.yaml": "{ title: T, field-reference: true }\n",
    };
    const { "content/items/other.md": _, ...rest } = files(
      "[x](/iiif/other/manifest.json) [y](/fields/)",
      odd,
    );
    expect(dead(writeCollection(rest))).toEqual([]);
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
      `${say}tel:1", which is not made into a link`,
    ]);
  });

  it("that can be no address is one that leads nowhere", () => {
    const told = dead(writeCollection(files("[x](/&Tab;/[x) [x](</\t/[x>)")));
    expect(told.map((each) => each.replace(/^.*?: /, ""))).toEqual([
      '"/&Tab;/[x", which leads to no page',
      '"/·/[x", which leads to no page',
    ]);
  });

  it("may lead to what is made only where there is something to show, and is warned of where there is not", () => {
    const ways = [
      "/fields/",
      "/items/by/variant/chest-b/",
      "/items/by/family/empty/",
      "/iiif/one/manifest.json",
    ];
    const paged = ["/sources/page/2/", "/items/one/page/2/", "/items/page/2/", "/sightings/chest-b/page/2"];
    const lacking = paged.slice(0, 3);
    const none = {
      "schemas/reference/chest/chest-b.yaml": "name: Chest B\nextends: chest-a\n",
      "schemas/reference/empty/family.yaml": "name: Empty\n",
    };
    const text = [...ways, ...paged].map((way) => `[x](${way})`).join(" ");
    const told = (more: Files) =>
      dead(writeCollection(files(text, more))).map((each) => /"([^"]*)"/.exec(each)?.[1]);
    expect(told(none)).toEqual([...ways, ...lacking]);
    expect(
      told({
        ...none,
        "content/collection.yaml": "title: T\nfield-reference: true\n",
        "content/items/one/index.md": item("chest-b", text, "photos: [{ file: a.png, alt: A }]\n"),
        "schemas/reference/empty/empty-a.yaml": "name: E\nparts: { key: { name: Key } }\n",
        "content/items/third.md": item("empty-a", ""),
      }),
    ).toEqual(lacking);
  });

  it("may lead to the display card of what has a place to stand it at, and not of what is gone", () => {
    const gone = ["lost", "stolen", "destroyed"].map((status) => [
      `content/items/${status}.md`,
      item("trunk-a", "", `status: ${status}\nformerly: [${status}-before]\n`),
    ]);
    const kept = { "content/items/sold.md": item("trunk-a", "", "status: sold\n") };
    const ids = ["lost", "stolen", "destroyed", "destroyed-before", "sold", "one", "other"];
    const text = ids.map((id) => `[x](../${id}/card/) [y](../${id}/)`).join(" ");
    const told = dead(writeCollection(files(text, { ...Object.fromEntries(gone), ...kept })));
    expect(told.map((each) => /"([^"]*)"/.exec(each)?.[1])).toEqual(
      ["lost", "stolen", "destroyed", "destroyed-before"].map((id) => `../${id}/card/`),
    );
  });

  it("may lead to as many pages of a list as it has", () => {
    // A hundred and one outfits, of which a page has a hundred: 99 of these, one, and the other.
    const many = Object.fromEntries(
      Array.from({ length: 99 }, (_, at) => [`content/items/many-${at}.md`, item("chest-a", "")]),
    );
    const lists = ["/items/", "/items/by/family/chest/", "/items/by/variant/chest-a/"];
    const text = [...lists, ...lists].map((list, at) => `[x](${list}page/${at < 3 ? 2 : 1}/)`).join(" ");
    const told = dead(writeCollection(files(`${text} [x](/items/page/3/)`, many)));
    expect(told.map((each) => /"([^"]*)"/.exec(each)?.[1])).toEqual([
      "/items/by/family/chest/page/2/",
      "/items/by/variant/chest-a/page/2/",
      ...lists.map((list) => `${list}page/1/`),
      "/items/page/3/",
    ]);
  });

  it("may lead to a place in an article that its page has, to the top of any, and to any in the list of them", () => {
    const text =
      "[a](#top) [b](#main_text) [c](#head) [d](../#articles) [e](../index.html#x) [f](../essay#head) [g](../../items/one/#x)";
    const root = writeCollection(files("", { "content/articles/essay.md": `---\ntitle: E\n---\n${text}\n` }));
    expect(dead(root).map((told) => told.replace(/ which leads nowhere on that page.*/, ""))).toEqual([
      'content/articles/essay.md: "#head",',
      'content/articles/essay.md: "../essay#head",',
    ]);
  });

  it("to a picture is warned of, and the page has its alternative text instead", async () => {
    const text =
      "As ![seen *here*](/images/a.jpg), ![there](b.jpg), ![](c.jpg) and [![a [far](../two/)](https://example.org/c.jpg)](../other/).";
    const root = writeCollection(files(text));
    expect(dead(root).map((each) => each.replace(/^.*?: |, a picture.*/g, ""))).toEqual([
      '"/images/a.jpg"',
      '"b.jpg"',
      '"c.jpg"',
      '"https://example.org/c.jpg"',
    ]);
    const site = path.join(root, "_site");
    await buildSite(root, site, "public");
    const page = readFileSync(path.join(site, "items/one/index.html"), "utf8");
    expect(page).toContain(
      '<p>As seen <em>here</em>, there,  and <a href="../../items/other/">a far</a>.</p>',
    );
    expect(page).not.toContain("<img");
  }, 60_000);

  it("in the description of a family leads from its page on the list of families, too", async () => {
    const root = writeCollection(
      files("", {
        "schemas/reference/trunk/family.yaml":
          "name: Trunks\ndescription: Unlike [a](../chest/), [b](../../items/one/), [c](#variants) and [d](/items/).\n",
      }),
    );
    expect(dead(root)).toEqual([]);
    const site = path.join(root, "_site");
    await buildSite(root, site, "public");
    const list = readFileSync(path.join(site, "families/index.html"), "utf8");
    const ways = [...list.matchAll(/<a href="([^"]*)">[abcd]<\/a>/g)].map(([, way = ""]) => way);
    // As a browser reads them from there.
    expect(ways.map((way) => new URL(way, "https://example.org/families/").href.slice(19))).toEqual([
      "/families/chest/",
      "/items/one/",
      "/families/trunk/#variants",
      "/items/",
    ]);
  }, 60_000);

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
      checkCollection(root).diagnostics.filter(({ severity }) => severity === "warning").length;
    expect(dead(root)).toHaveLength(1);
    expect(await warningsBuilt(root)).toBe(checked());
    rmSync(path.join(root, "content/items/other.md"));
    expect(dead(root)).toHaveLength(2);
    expect(await warningsBuilt(root)).toBe(checked());
  }, 60_000);
});
