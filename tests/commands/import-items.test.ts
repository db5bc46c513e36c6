import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { pilotageFolder } from "./pilotage.ts";
import { runHere } from "./run-here.ts";
import { spreadsheet } from "./spreadsheet.ts";

const sheet = [
  "Ref\tName\tModel\tSet no\tExamined on\tArc\tSextant\tHorizon shade\tMercury bottle\tOther contents\tPrice paid\tNotes",
  "Case 2\tThe ferry outfit\tEbbholm Pilotage outfit, Mark II\t007\t14.03.2026\tPlatinum\tyes\t3\tno\tStrap; Ruler\t£310\tFound in a loft",
  "Case 3\tThe lock outfit\tpilot-mk2\t\t2026\tgold\tyes\t\t\t\t\t",
  "river-office\tAnother\tpilot-mk2\t\t\t\t\t\t\t\t\t",
  "",
].join("\n");

describe("fittedcase import items", () => {
  it("writes an item for each row, and never over one that is there", async () => {
    const root = pilotageFolder();
    const before = readFileSync(path.join(root, "content/items/river-office/index.md"), "utf8");
    const { folder, file } = spreadsheet(sheet, "cases.tsv");
    expect((await runHere(["import", "items", file, "--root", root], folder)).code).toBe(0);
    const importing = ["import", "items", file, "--map", "cases.map.yaml", "--root", root];
    const { code, out } = await runHere(importing, folder);
    expect(code).toBe(1);
    expect(out).toContain("1 row brought in; 0 rows already there; 2 rows rejected.");
    expect(out).toContain('row 3: arc: Found "gold"; expected "silver" or "platinum".');
    expect(out).toContain(
      'row 4: id: Found "river-office", which is already the id of content/items/river-office/index.md; expected a different id for each item.',
    );
    expect(readFileSync(path.join(root, "content/items/river-office/index.md"), "utf8")).toBe(before);
    expect(existsSync(path.join(root, "content/items/case-3"))).toBe(false);
    expect((await runHere(["check"], root)).code).toBe(0);

    const data = JSON.parse((await runHere(["explain", "case-2", "--json"], root)).out);
    expect(data).toMatchObject({ title: "The ferry outfit", set: "007", examined: "2026-03-14" });
    expect(data.features).toContainEqual({ id: "arc", name: "Arc", value: "platinum" });
    // A count below what was issued leaves the rest unexamined: (10 + 3/4) / 13 and (10 + 4/4) / 13.
    expect(data.completeness.weighted.low).toBeCloseTo(10.75 / 13, 12);
    expect(data.completeness.weighted.high).toBeCloseTo(11 / 13, 12);
    expect(data.completeness.extras.map(({ name }: { name: string }) => name)).toEqual(["Strap", "Ruler"]);
    expect(data.confidential.paid).toEqual({ amount: 310, currency: "GBP" });
    expect(data.description).toContain("Found in a loft");

    const again = await runHere(importing, folder);
    expect(again.out).toContain("0 rows brought in; 1 row already there; 2 rows rejected.");
  });

  it("says where pictures must lie of an item that shows some", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet(
      'id,title,variant,photos\nattic,The attic outfit,pilot-mk2,"[{ file: open.png, alt: Open }]"\n',
      "items.csv",
    );
    const importing = ["import", "items", file, "--root", root];
    const { code, out } = await runHere(importing, folder);
    expect(code).toBe(1);
    expect(out).toContain(
      'row 2: photos: Found "open.png"; expected a file of this name beside the item. Put it into content/items/attic/ first.',
    );
    mkdirSync(path.join(root, "content/items/attic"));
    writeFileSync(path.join(root, "content/items/attic/open.png"), "");
    expect((await runHere(importing, folder)).out).toContain("1 row brought in");
  });

  // As a keyboard without these letters writes them: common practice, no source.
  it("spells out in an id what has no plain letter", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet(
      "title,variant\nStraßenlaterne Öller,pilot-mk2\nÆskulap Ærø,pilot-mk2\nŒuvre Łódź Đurđa,pilot-mk2\n",
    );
    await runHere(["import", "items", file, "--root", root], folder);
    for (const id of ["strassenlaterne-oller", "aeskulap-aero", "oeuvre-lodz-durda"]) {
      expect(existsSync(path.join(root, `content/items/${id}/index.md`)), id).toBe(true);
    }
  });

  it("understands what a list calls the status of an item, and asks about other words", async () => {
    const root = pilotageFolder();
    const words = [
      "zum Verkauf",
      "For sale",
      "verkauft",
      "In der Sammlung",
      "kept",
      "Vergleich",
      "verliehen",
      "als gestohlen gemeldet",
      "Broken up",
      "verschollen",
    ];
    const { folder, file } = spreadsheet(
      `id,Titel,variant,Stand\n${words.map((word, at) => `n-${at},N ${at},pilot-mk2,${word}\n`).join("")}`,
    );
    await runHere(["import", "items", file, "--root", root], folder);
    const map = path.join(folder, "old list.map.yaml");
    const proposed = readFileSync(map, "utf8");
    expect(proposed).toContain(
      "      ## Not understood. Say for each which it is, collection, offered, sold, reference, lost, stolen, destroyed, and remove the #.\n      # verliehen: ",
    );
    const importing = ["import", "items", file, "--map", map, "--root", root];
    const { out } = await runHere(importing, folder);
    expect(out).toContain("9 rows brought in; 0 rows already there; 1 row rejected.");
    writeFileSync(map, proposed.replace(/# verliehen: .*/, "verliehen: collection"));
    expect((await runHere(importing, folder)).code).toBe(0);
    const statuses = words.map(
      (_, at) =>
        /^status: (.*)$/m.exec(readFileSync(path.join(root, `content/items/n-${at}/index.md`), "utf8"))?.[1],
    );
    expect(statuses).toEqual([
      "offered",
      "offered",
      "sold",
      "collection",
      "collection",
      "reference",
      "collection",
      "stolen",
      "destroyed",
      "lost",
    ]);
  });

  it("leads nowhere outside the collection, whatever a cell says", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet(
      "id,title,variant\n../../../evil,One,pilot-mk2\n,/etc/passwd,pilot-mk2\n",
    );
    const { code, out } = await runHere(["import", "items", file, "--root", root], folder);
    expect(code).toBe(0);
    expect(out).toContain("Wrote content/items/evil/index.md.");
    expect(out).toContain("Wrote content/items/etc-passwd/index.md.");
  });

  it("keeps the rows of one id that say different things apart, and takes one that is repeated once", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet(
      "id,title,variant\na,One,pilot-mk2\na,One,pilot-mk2\na,Two,pilot-mk2\n",
    );
    const { out } = await runHere(["import", "items", file, "--root", root], folder);
    expect(out).toContain("1 row brought in; 1 row already there; 1 row rejected.");
  });

  it.each([
    [
      "Nr,Titel,Modell,Seriennummer,Satz",
      "1,Eine,pilot-mk2,H2101,7\n2,Zwei,pilot-mk2,H2107,9",
      "Seriennummer",
    ],
    [
      "No,Title,Model,Serial of the case",
      "1,One,pilot-mk2,H2101\n2,Two,pilot-mk2,H2107",
      "Serial of the case",
    ],
    ["No,Title,Model,Number", "1,One,pilot-mk2,H2101\n2,Two,pilot-mk2,H2107", "Number"],
    ["Number,Title,Model,No", "H2101,One,pilot-mk2,1\nH2107,Two,pilot-mk2,2", "Number"],
    ["No,Title,Model", "H2101,One,pilot-mk2\nH2107,Two,pilot-mk2", "No"],
  ])(
    "takes the serial of %j from the column that says so, not from one that counts",
    async (headings, rows, from) => {
      const root = pilotageFolder();
      const { folder, file } = spreadsheet(`${headings}\n${rows}\n`);
      await runHere(["import", "items", file, "--root", root], folder);
      const map = readFileSync(path.join(folder, "old list.map.yaml"), "utf8");
      expect(/^ {2}serial: (.*)$/m.exec(map)?.[1]).toBe(from);
      expect(map).not.toContain("counts the rows");
    },
  );

  it("asks whether a column that counts the rows is the serial, where there is no other", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet("No,Title,Model\n1,One,pilot-mk2\n2,Two,pilot-mk2\n");
    await runHere(["import", "items", file, "--root", root], folder);
    expect(readFileSync(path.join(folder, "old list.map.yaml"), "utf8")).toContain(
      "  ## This counts the rows, 1, 2, 3. If it is the list's own number, remove the line.\n  serial: No\n",
    );
  });

  it("imports with a map that was corrected by hand", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet("What;Kind of case;When\nThe ferry outfit;second;3/4/2025\n");
    await runHere(["import", "items", file, "--root", root], folder);
    const map = path.join(folder, "old list.map.yaml");
    writeFileSync(
      map,
      "import: items\ndates: day-month\ncolumns:\n  title: What\n  variant: { column: Kind of case, values: { second: pilot-mk2 } }\n  examined: When\n  status: { always: reference }\n",
    );
    const { code } = await runHere(["import", "items", file, "--map", map, "--root", root], folder);
    expect(code).toBe(0);
    expect(readFileSync(path.join(root, "content/items/the-ferry-outfit/index.md"), "utf8")).toBe(
      "---\ntitle: The ferry outfit\nvariant: pilot-mk2\nexamined: 2025-04-03\nstatus: reference\n---\n",
    );
  });
});
