import { cpSync, mkdirSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { siteFiles } from "../collections/site-files.ts";
import { pilotageFolder } from "./pilotage.ts";
import { repository } from "./run.ts";
import { runHere } from "./run-here.ts";

const awkward = {
  "content/sightings/awkward.yaml": `- { seen: 1998-03-12, variant: pilot-mk2, kind: offer, price: 1250.125, currency: EUR, note: "=SUM(A1:A9)" }
- { seen: "1998-21", variant: pilot-mk1, kind: mention, serial: unknown, note: "'=kept as it is" }
- { seen: 1931~, variant: pilot-mk2, kind: record, example: "+49 by the river", present: [sextant, rest], absent: [shade], relisted: true, note: "two\\nlines, \\"quoted\\"; -x" }
- { seen: 2003-25, variant: pilot-mk1, kind: record, currency: EUR, condition: "-" }
`,
  "content/items/awkward.md": `---
title: "=HYPERLINK(\\"x\\")"
variant: pilot-mk2
serial: 0118
set: 118
examined: 1985-04-12/1985-04-14
features: { arc: silver }
parts:
  sextant: [{ state: present, marks: 118 }, { state: unverified, note: "a: b, \\"c\\"" }]
  shade: { state: not-issued, evidence: issue-book }
extras: [{ name: "-strap" }]
labels: [{ kind: plate, text: [one, "two: three"], private: [text] }]
video: { src: w.webm, moments: [{ part: sextant, at: "1:17" }] }
materials: "Oak; brass"
measurements: ["Case: 310 × 240 mm", "Weight: 4.2 kg"]
distinguishing: "[118] burnt into the lid\\nand a crack beside it"
private: { insured: 3100.50, note: null, list: [1, "1", true] }
publish: { serial: shown }
formerly: [old-one, old-two]
---

- A list

And \`\`\`more\`\`\`, with a trailing line.
`,
  "content/items/w.webm": "",
};

/** The same references, with no sighting and no item. */
function emptied(root: string): string {
  const bare = mkdtempSync(path.join(tmpdir(), "fittedcase-bare-"));
  mkdirSync(path.join(bare, "content"));
  for (const part of ["schemas/reference", "content/collection.yaml", "content/sources.yaml"]) {
    cpSync(path.join(root, part), path.join(bare, part), { recursive: true });
  }
  return bare;
}

async function exported(kind: string, root: string, folder: string, name: string): Promise<string> {
  const ran = await runHere(["export", kind, "--root", root, "--out", name], folder);
  expect(ran).toMatchObject({ code: 0, err: "" });
  return readFileSync(path.join(folder, name), "utf8");
}

describe("fittedcase export", () => {
  it.each(["sightings", "items"])("gives %s as CSV that import takes, to the letter", async (kind) => {
    const root = pilotageFolder(awkward);
    const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-export-"));
    const text = await exported(kind, root, folder, "all.csv");

    // Into the same collection: nothing changes.
    const before = siteFiles(path.join(root, "content"));
    const back = await runHere(["import", kind, "all.csv", "--root", root], folder);
    expect(back.code).toBe(0);
    expect(back.out).toMatch(/\n0 rows brought in; \d+ rows already there; 0 rows rejected\./);
    expect([...siteFiles(path.join(root, "content"))]).toEqual([...before]);

    // Into one that has only the references: everything comes, and is exported alike.
    const bare = emptied(root);
    if (kind === "items")
      cpSync(path.join(root, "content/items/w.webm"), path.join(bare, "content/items/awkward/w.webm"), {
        recursive: true,
      });
    await runHere(["import", kind, "all.csv", "--root", bare], folder);
    const sorted = (csv: string) => (parse(csv) as string[][]).map((row) => JSON.stringify(row)).sort();
    expect(sorted(await exported(kind, bare, folder, "again.csv"))).toEqual(sorted(text));
  });

  it("gives back the demonstration collection unchanged", async () => {
    const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-export-"));
    for (const kind of ["sightings", "items"]) {
      await exported(kind, repository, folder, `${kind}.csv`);
      const back = ["import", kind, `${kind}.csv`, "--dry-run", "--root", repository];
      const { code, out } = await runHere(back, folder);
      expect(code).toBe(0);
      expect(out).toMatch(
        /\n0 rows can be brought in; [\d,]+ rows already there; 0 rows would be rejected\./,
      );
    }
  });

  it("has a column for every field of an item", async () => {
    const schema = readFileSync(path.join(repository, "schemas/records/item.schema.json"), "utf8");
    const { out } = await runHere(["export", "items"], pilotageFolder());
    const [headings = []] = parse(out) as string[][];
    const columns = new Set(headings.map((heading) => heading.split(".")[0]));
    expect(Object.keys(JSON.parse(schema).properties).filter((field) => !columns.has(field))).toEqual([]);
  });

  it("writes no cell that a spreadsheet would run", async () => {
    const root = pilotageFolder(awkward);
    for (const kind of ["sightings", "items"]) {
      const { out } = await runHere(["export", kind, "--root", root], "/");
      for (const row of parse(out) as string[][])
        for (const cell of row) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
    }
  });

  it("is RFC 4180: a heading, CRLF at the end of each line, quotation marks doubled", async () => {
    const { out } = await runHere(["export", "sightings"], pilotageFolder(awkward));
    expect(
      out.startsWith(
        "seen,variant,serial,example,source,kind,list,present,absent,condition,price,currency,relisted,note\r\n",
      ),
    ).toBe(true);
    expect(out).toContain('"two\nlines, ""quoted""; -x"\r\n');
    expect(out.endsWith("\r\n")).toBe(true);
    const marked = await runHere(["export", "sightings", "--bom"], pilotageFolder());
    expect(marked.out.startsWith("\uFEFFseen")).toBe(true);
  });

  it.each([
    [["export"], 2],
    [["export", "boats"], 2],
    [["export", "items", "--out", "content/items.csv"], 2],
    [["export", "items", "--out", "gone/items.csv"], 2],
    [["export", "--help"], 0],
  ])("%j exits with %d", async (args, code) => {
    expect((await runHere(args, pilotageFolder())).code).toBe(code);
  });

  it("leaves nothing out in silence", async () => {
    const root = pilotageFolder({
      "content/sightings/wrong.csv": "seen,variant,kind\nsoon,pilot-mk2,offer\n",
    });
    const { code, out, err } = await runHere(["export", "sightings"], root);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain("wrong-date");
  });
});
