import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { runHere } from "../commands/run-here.ts";

/**
 * Source  Thornes, Dorrell and Lie, Introduction to Object ID (Getty Information Institute, 1999): the questions
 * of the checklist, from memory. 'Subject' is left out; see the record.
 */
const questions = [
  "Photographs",
  "Type of object",
  "Materials and techniques",
  "Measurements",
  "Inscriptions and markings",
  "Distinguishing features",
  "Title",
  "Date or period",
  "Maker",
  "Description",
];

const parts =
  "serials: [{ prefix: H, from: 1, to: 99999, made: 1931~/1938 }]\nparts:\n  sextant: { standing: core }\n";

const description = `It is <figure:items/full/completeness> complete, see [@harl-2003; @lid-book, p. 7].

A *fine* case with [its sisters](/items/), and **nothing** in its \`tray\`.
`;

const full = item(`serial: H27182
materials: Oak and brass
measurements: ["310 × 240 × 120 mm", 4.2 kg]
distinguishing: A burn in the lid
labels: [{ where: lid, kind: plate, text: [ONE, TWO] }]
parts: { sextant: { state: present, serial: S9, marks: [P31], condition: worn, repairs: [relacquered] } }
`).replace("Text.\n", description);

describe("the Object ID record, in the owner's own build", () => {
  let pages: Map<string, string>;
  let data: Record<
    string,
    { confidential?: { objectId: { lacks: string[]; answers: Record<string, string[]> } } }
  >;
  let open: string;

  beforeAll(async () => {
    const root = writeCollection(
      smallCollection(parts, {
        "content/sources.yaml": `- { id: harl-2003, title: Lids, author: [{ family: Harl }], issued: 2003 }
- { id: lid-book, type: book, title: The lid book }
`,
        "content/items/full/index.md": full,
        "content/items/bare/index.md": item(""),
      }),
    );
    const out = mkdtempSync(path.join(tmpdir(), "fittedcase-object-id-"));
    await runHere(["build", "--root", root, "--out", path.join(out, "public")], root);
    await runHere(["build", "--root", root, "--out", path.join(out, "private"), "--private"], root);
    const read = (file: string) => readFileSync(path.join(out, "private", file), "utf8");
    pages = new Map(["full", "bare"].map((id) => [id, read(`items/${id}/index.html`)]));
    data = Object.fromEntries(["full", "bare"].map((id) => [id, JSON.parse(read(`data/items/${id}.json`))]));
    open = [...siteFiles(path.join(out, "public")).values()].map(String).join("\n");
  });

  it("asks the questions of the standard, in its order", () => {
    const page = pages.get("full") ?? "";
    const record = page.slice(page.indexOf('id="object-id"'));
    const asked = [...record.matchAll(/<dt>([^<]*)<\/dt>/g)].map(([, name]) => name);
    expect(asked.slice(0, questions.length)).toEqual(questions);
  });

  it("answers them from what is recorded", () => {
    expect(data.full?.confidential?.objectId.answers).toMatchObject({
      materials: ["Oak and brass"],
      measurements: ["310 × 240 × 120 mm", "4.2 kg"],
      markings: ["H27182", "plate, lid: ONE / TWO", "Sextant: S9", "Sextant: P31"],
      distinguishing: ["A burn in the lid", "Sextant: relacquered", "Sextant: worn"],
      date: ["about 1931 to 1938"],
    });
  });

  it("has the description in plain words, as it is sent to people who do not have the site", () => {
    // Of one part that was issued, one is there.
    const words =
      "It is 100% complete, see (Harl 2003; The lid book, p.\u00a07). " +
      "A fine case with its sisters, and nothing in its tray.";
    expect(data.full?.confidential?.objectId.answers.description).toEqual([words]);
    const page = pages.get("full") ?? "";
    expect(page.slice(page.indexOf('id="object-id"'))).toContain(`<dt>Description</dt><dd>${words}</dd>`);
  });

  it("lists what it still lacks", () => {
    expect(data.full?.confidential?.objectId.lacks).toContain("photographs");
    expect(data.full?.confidential?.objectId.lacks).not.toContain("materials");
    expect(data.bare?.confidential?.objectId.lacks).toEqual(
      expect.arrayContaining(["photographs", "materials", "measurements", "markings", "distinguishing"]),
    );
    expect(pages.get("bare")).toContain(
      "It still lacks: Photographs, Materials and techniques, Measurements,",
    );
  });

  it("is nowhere in the public site", () => {
    for (const word of ['id="object-id"', '"objectId"', "A burn in the lid"]) {
      expect(open.includes(word), word).toBe(false);
    }
  });
});
