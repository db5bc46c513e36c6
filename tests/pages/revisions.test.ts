import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { type Files, item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const revised = 'revisions:\n  - { date: 2018-04, note: "First entered." }\n';
const files: Files = smallCollection(
  `parts: { p: { name: Peg } }\n${revised}  - { date: 2024-05-05, note: "The lid is domed, not flat." }\n`,
  {
    "schemas/reference/chest/chest-b.yaml": "name: Chest B\nextends: chest-a\n",
    "schemas/reference/chest/family.yaml": `name: Chests\n${revised}`,
    "content/items/one.md": item(
      `serial: H2118\nexamined: 2020\n${revised}  - { date: 2024-05-05, note: "Peg of H2118 found to be a later one." }\nparts: { p: present }`,
    ),
    "content/items/two.md": item("examined: 2021-03-04\nparts: { p: present }"),
    "content/items/three.md": item(`examined: 2025\n${revised}parts: { p: present }`),
    "content/items/four.md": item("updated: 2025-21\nparts: { p: present }"),
    "content/articles/pegs.md": `---\ntitle: Pegs\n${revised}---\nText.\n`,
    "content/articles/lids.md": "---\ntitle: Lids\nupdated: 2024/2025\n---\nText.\n",
  },
);

describe("what was changed in a record, and when", () => {
  let site: string;
  beforeAll(async () => {
    const root = writeCollection(files);
    site = path.join(root, "_site");
    const { code, err } = await runHere(["build", "--root", root], root);
    expect({ code, err: err.includes("error") }).toEqual({ code: 0, err: false });
  });
  const text = (file: string) => readFileSync(path.join(site, file), "utf8");
  const said = (file: string) =>
    text(`${file}/index.html`)
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
  const data = (file: string) => JSON.parse(text(`data/${file}.json`)) as Record<string, unknown>;

  it("stands beside the citation, the newest first, without the serials that are masked", () => {
    expect(said("items/one")).toMatch(
      /Revisions 5 May 2024: Peg of H21•• found to be a later one\. April 2018: First entered\./,
    );
    expect(said("variants/chest-a")).toMatch(
      /Revisions 5 May 2024: The lid is domed, not flat\. April 2018: First entered\./,
    );
    expect(said("families/chest")).toContain("Revisions April 2018: First entered.");
    expect(said("articles/pegs")).toContain("Revisions April 2018: First entered.");
    expect(said("items/two")).not.toContain("Revisions");
    // What was changed in one variant was not changed in those that take their parts from it.
    expect(said("variants/chest-b")).not.toContain("Revisions");
  });

  it("is in the data file of the page", () => {
    const first = { date: "2018-04", note: "First entered." };
    expect(data("items/one").revisions).toEqual([
      { date: "2024-05-05", note: "Peg of H21•• found to be a later one." },
      first,
    ]);
    expect(data("items/two").revisions).toEqual([]);
    expect(data("variants/chest-a").revisions).toHaveLength(2);
    expect(data("variants/chest-b").revisions).toEqual([]);
    expect(data("families/chest").revisions).toEqual([first]);
    expect(data("articles/pegs").revisions).toEqual([first]);
  });

  it("dates the record where nothing else says when it was last changed", () => {
    expect(data("items/one").updated).toBe("2024-05-05");
    // Whoever examines it later writes down what was found.
    expect(data("items/three").updated).toBe("2025");
    expect(data("articles/pegs").updated).toBe("2018-04");
    for (const page of ["items/one", "variants/chest-a"])
      expect(said(page)).toContain(
        '"issued": { "date-parts": [ [ 2024, 5, 5 ] ] }'.replaceAll('"', "&quot;"),
      );
    expect(text("articles/pegs/index.html")).toContain('"dateModified":"2018-04"');
    expect(text("items/one/index.html")).toContain('"dateModified":"2024-05-05"');
  });

  it("dates nothing for programs that take one year, month or day, where it is none", () => {
    // RFC 3339, full-date: a month is 01 to 12; and 21 is the spring of EDTF alone.
    expect(text("feed.xml")).not.toContain("items/four");
    expect(text("feed.xml")).toContain("<updated>2025-01-01T00:00:00Z</updated>");
    expect(text("items/four/index.html")).not.toContain("dateModified");
    expect(text("articles/lids/index.html")).not.toContain("dateModified");
    expect(data("items/four").updated).toBe("2025-21");
    expect(data("articles/lids").updated).toBe("2024/2025");
  });

  it("is what the feed says of the entry", () => {
    const entryOf = (id: string) =>
      text("feed.xml")
        .split("<entry>")
        .find((entry) => entry.includes(`/items/${id}/`));
    expect(entryOf("one")).toContain("<updated>2024-05-05T00:00:00Z</updated>");
    expect(entryOf("one")).toContain("<summary>Peg of H21•• found to be a later one.</summary>");
    expect(entryOf("two")).toContain("<summary>Chest A</summary>");
    // What was noted in 2018 is not what was examined in 2025.
    expect(entryOf("three")).toContain("<summary>Chest A</summary>");
  });
});

it("a revision after the day on which the record says that it was last changed is told of", () => {
  const told = (updated: string, revision: string) =>
    checkCollection(
      writeCollection(
        smallCollection("parts: { p: {} }\n", {
          "content/items/one.md": item(
            `updated: ${updated}\nrevisions: [{ date: ${revision}, note: Mended. }]`,
          ),
          "content/articles/pegs.md": `---\ntitle: Pegs\nupdated: ${updated}\nrevisions: [{ date: ${revision}, note: Mended. }]\n---\nText.\n`,
        }),
      ),
    ).diagnostics.flatMap(({ code, file, line, message }) =>
      code === "updated-before-change" ? [`${file}:${line} ${message}`] : [],
    );
  const message =
    'Found "2024-05", which is later than "updated" (2024-04-30); expected the day of the last change in "updated". If you leave "updated" out, the newest such day in the record is used.';
  expect(told("2024-04-30", "2024-05")).toEqual([
    `content/articles/pegs.md:4 ${message}`,
    `content/items/one.md:5 ${message}`,
  ]);
  // It may have been the same day.
  expect(told("2024-05-01", "2024-05")).toEqual([]);
  expect(told("2024", "2024-05-05")).toEqual([]);
});

it("an examination after the day on which the record says that it was last changed is told of", () => {
  const told = (updated: string, examined: string) =>
    checkCollection(
      writeCollection(
        smallCollection("parts: { p: {} }\n", {
          "content/items/one.md": item(`examined: ${examined}\nupdated: ${updated}`),
        }),
      ),
    ).diagnostics.flatMap(({ code, file, line, column, found }) =>
      code === "updated-before-change" ? [`${file}:${line}:${column} ${found}`] : [],
    );
  expect(told("2012-06-30", "2014-01-20")).toEqual([
    'content/items/one.md:4:11 "2014-01-20", which is later than "updated" (2012-06-30)',
  ]);
  expect(told("2014-01-20", "2014-01-20")).toEqual([]);
  expect(told("2014", "2014-01-20")).toEqual([]);
  expect(told("2014-01-20", "2014-01")).toEqual([]);
});
