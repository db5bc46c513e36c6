import path from "node:path";
import { describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

const root = (watching: string, ...rows: string[]) =>
  writeCollection(
    smallCollection("parts:\n  fork: { name: Fork }\n", {
      "schemas/reference/crate/family.yaml": "name: Crates\n",
      "schemas/reference/crate/crate-a.yaml": "name: Crate A\nparts:\n  fork: { name: Fork }\n",
      "content/sources.yaml": "- { id: ledger, title: Ledger }\n",
      "content/collection.yaml": `title: A test collection\n${watching}`,
      "content/items/one.md": item("parts: { fork: present }"),
      "content/sightings/log.csv": `seen,variant,kind,source,serial,relisted\n${rows.map((row) => `${row}\n`).join("")}`,
    }),
  );

const told = (folder: string): string[] =>
  checkCollection(folder).diagnostics.flatMap(({ code, file, line, column, found, expected }) =>
    code === "no-photograph" ? [] : [`${file}:${line}:${column} ${code} ${found}; ${expected}`],
  );

describe("offers after the last year that was watched", () => {
  const late = [
    "2024,chest-a,offer,ledger,1,",
    "2026-02,chest-a,offer,ledger,2,",
    "2025/2026,chest-a,offer,ledger,3,",
    "2027-08,crate-a,offer,ledger,4,",
    "2026,chest-a,record,ledger,5,",
    "2028,chest-a,offer,ledger,2,true",
    "1998,chest-a,offer,ledger,6,",
  ];

  it("are told of once, where the years are, with how many and the latest", async () => {
    const folder = root("watching: 2001/2025\n", ...late);
    expect(told(folder)).toEqual([
      'content/collection.yaml:2:11 offers-after-watching "2001/2025", and 2 offers seen later (the latest "2027-08"), which are not counted; years that extend to the last in which offers were watched for',
    ]);
    const { written } = await buildSite(folder, path.join(folder, "_site"), "public");
    expect(written?.warnings).toBe(checkCollection(folder).diagnostics.length);
  });

  it("are none where the year itself was watched in part, or none are named", () => {
    expect(told(root("watching: 2001/2027-03\n", ...late))).toEqual([]);
    expect(told(root("", ...late))).toEqual([]);
  });
});
