import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { type Files, item, smallCollection, writeCollection } from "../collections/collection.ts";

const told = (files: Files): string[] =>
  checkCollection(
    writeCollection(
      smallCollection("parts:\n  fork: { name: Fork }\n", {
        "content/sources.yaml": "- { id: ledger, title: Ledger }\n",
        ...files,
      }),
    ),
  ).diagnostics.flatMap(({ code, file, line, column, found, remedy }) =>
    code === "no-photograph"
      ? []
      : [
          `${file.replace(/^.*\//, "")}:${line}:${column} ${code} ${found}${remedy === null ? "" : ` ${remedy}`}`,
        ],
  );

describe("one mistake is told of once", () => {
  const article = (link: string) => `---\ntitle: On chests\n---\nSee [the chest](${link}).\n`;

  it.each([
    ["a field twice", "title: A chest\ntitle: A chest\nvariant: chest-a\nformerly: [old-chest]"],
    ["a line set in too far", "title: A chest\n variant: chest-a\nformerly:\n  - old-chest"],
    ["its former addresses set in too far", "title: A chest\nvariant: chest-a\n formerly: [old-chest]"],
  ])("of a record with %s, and no link to an address that it had before", (_, frontMatter) => {
    const files = {
      "content/items/one.md": `---\n${frontMatter}\n---\nText.\n`,
      "content/articles/on.md": article("../../items/old-chest/"),
    };
    expect(told(files).map((each) => each.split(" ")[1])).toEqual(["yaml-syntax"]);
  });

  it("of a record that is no text, and no link to it", () => {
    const files = {
      "content/items/one.md": new Uint8Array([0x2d, 0xff, 0xfe, 0x00]),
      "content/articles/on.md": article("../../items/one/"),
    };
    expect(told(files).map((each) => each.split(" ")[1])).toEqual(["not-text"]);
  });

  it("of a record that cannot be read, while a link that has nothing to do with it is told of, too", () => {
    const files = {
      "content/items/one.md":
        "---\ntitle: A chest\ntitle: A chest\nvariant: chest-a\nformerly: [old-chest]\n---\n",
      "content/articles/on.md": article("../../items/other-chest/"),
    };
    expect(told(files).map((each) => each.split(" ")[1])).toEqual(["dead-link", "yaml-syntax"]);
  });

  it("of a variant in two families, and none of what names it", () => {
    expect(
      told({
        "schemas/reference/barrel/family.yaml": "name: Barrels\n",
        "schemas/reference/barrel/chest-a.yaml": "name: Chest A\nparts:\n  bung: { name: Bung }\n",
        "schemas/reference/chest/chest-b.yaml": "name: Chest B\nextends: chest-a\n",
        "content/items/one.md": item("features: { lock: iron }\nparts: { fork: present }"),
        "content/items/two.md": item("features: { lock: brass }\nparts: { bung: present }"),
        "content/sightings/log.csv": "seen,variant,kind,source,present\n2001,chest-a,offer,ledger,fork\n",
      }),
    ).toEqual([
      'chest-a.yaml:1:1 duplicate-id "chest-a", which is already the id of schemas/reference/barrel/chest-a.yaml',
    ]);
  });

  it("of a row with variant and serial in each other's place", () => {
    expect(
      told({
        "content/items/one.md": item("parts: { fork: present }"),
        "content/sightings/log.csv": "seen,variant,serial,source,kind\n2001,T200,chest-a,ledger,offer\n",
      }),
    ).toEqual(['log.csv:2:6 unknown-variant "T200" Variant and serial are swapped.']);
  });

  it("of a variant that is no id at all", () => {
    const row = (variant: string) =>
      told({
        "content/items/one.md": item("parts: { fork: present }"),
        "content/sightings/log.csv": `seen,variant,source,kind\n2001,${variant},ledger,offer\n`,
      });
    expect(row("Chest A")).toEqual(['log.csv:2:6 unknown-variant "Chest A" Did you mean "chest-a"?']);
    expect(row("T200")).toEqual(['log.csv:2:6 unknown-variant "T200" Known: chest-a.']);
  });
});
