import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { standingInWords } from "../../shared/pages/views/standing-words.ts";
import { english } from "../../shared/words/en/english.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const files = smallCollection("parts: { key: { name: Key, standing: core }, tray: { name: Tray } }\n", {
  "content/items/one.md": item("parts: { key: present, tray: present }\nassembled: [tray]"),
  "content/items/two.md": item("parts: { key: present }"),
  "content/articles/all.md": "---\ntitle: All\n---\n<table:items?variant=chest-a&show=completeness,status>\n",
});

// Moving parts changes what an object is, and it is said wherever the object is shown.
describe("an outfit that was made whole out of another case is called assembled", () => {
  let site: string;
  const text = (file: string) => readFileSync(path.join(site, file), "utf8");
  const words = (file: string) =>
    text(file)
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
  beforeAll(async () => {
    const root = writeCollection(files);
    site = path.join(root, "site");
    expect((await runHere(["build", "--root", root, "--out", site], root)).code).toBe(0);
  });

  it.each([
    ["items/one/index.html", "in the collection, assembled"],
    ["items/one/index.html", "From another case Tray"],
    ["items/one/card/index.html", "Assembled. From another case: Tray."],
    ["index.html", "Chest A, assembled"],
    ["items/index.html", "in the collection, assembled"],
    ["variants/chest-a/index.html", "in the collection, assembled"],
    ["articles/all/index.html", "in the collection, assembled"],
    ["compare/one/two/index.html", "From another case Tray —"],
  ])("on %s: %s", (page, said) => {
    expect(words(page)).toContain(said);
  });

  it("and another is not", () => {
    expect(words("items/two/index.html")).not.toContain("assembled");
  });

  it("in the data: the item's, the collection's and the table", () => {
    expect(JSON.parse(text("data/items/one.json"))).toMatchObject({
      assembled: ["tray"],
      parts: { tray: { assembled: true }, key: { assembled: false } },
    });
    expect(JSON.parse(text("data/collection.json")).items).toMatchObject([
      { id: "one", assembled: ["tray"] },
      { id: "two", assembled: [] },
    ]);
    const [header = "", one = "", two = ""] = text("data/items.csv").split("\r\n");
    expect([header, one, two].map((row) => row.split(",").at(-1))).toEqual(["assembled", "tray", ""]);
  });

  it("in the words of the lists that a browser makes", () => {
    expect(standingInWords({ status: "sold", assembled: true }, english)).toBe("sold, assembled");
    expect(standingInWords({ status: "sold", assembled: false }, english)).toBe("sold");
  });
});
