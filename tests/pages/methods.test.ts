import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { expectedEntropy } from "../../shared/statistics/expected-entropy.ts";
import { gower } from "../../shared/statistics/gower.ts";
import { separatingSets } from "../../shared/statistics/separating-sets.ts";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";
import { writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const counted = ["completeness", "identification", "dating", "custody", "likeness"] as const;

/** The examples of the page, as records: the numbers beside them there are reckoned by hand. */
const root = writeCollection({
  "content/collection.yaml": "title: Chests\n",
  "content/sources.yaml": "- { id: ledger, title: Ledger }\n",
  "schemas/reference/chest/family.yaml": "name: Chests\n",
  "schemas/reference/chest/one.yaml": `name: One
issued: 1931/1938
made: { count: 226, source: ledger, page: 88 }
parts:
  a: { standing: core, weight: 5 }
  b: { weight: 3 }
  c: { weight: 1 }
  d: { weight: 1 }
  lamp:
    standing: optional
    quantity: 3
    serials:
      - { prefix: L, from: 1, to: 9, made: 1926/1930, source: ledger }
      - { prefix: M, from: 1, to: 9, made: 1930/1932, source: ledger }
      - { prefix: N, from: 1, to: 9, made: 1940/1945, source: ledger }
`,
  "schemas/reference/chest/two.yaml": "name: Two\nissued: 1931\nparts: { a: {} }\n",
  "content/items/parts.md":
    "---\ntitle: Parts\nvariant: one\nparts: { a: present, c: present, d: absent }\n---\n",
  ...Object.fromEntries(
    ["L", "M", "N"].map((prefix) => [
      `content/items/lamp-${prefix.toLowerCase()}.md`,
      `---\ntitle: Lamp ${prefix}\nvariant: one\nparts: { lamp: { state: present, serial: ${prefix}5 } }\n---\n`,
    ]),
  ),
  "content/items/hands.md": `---
title: Hands
variant: two
examined: 2026
provenance:
  - { date: 1931/1946, event: in service, evidence: stamp }
  - { date: 2001/.., event: acquired, evidence: receipt }
---
`,
});

describe("the page of methods", () => {
  beforeAll(async () => {
    expect((await runHere(["build"], root)).err).not.toContain("error");
  }, 60_000);

  const page = () => readFileSync(path.join(root, "_site/methods/index.html"), "utf8");
  const chapters = () =>
    page()
      .split(/<section [^>]*id="/)
      .slice(1);
  const itemOf = (id: string) =>
    JSON.parse(readFileSync(path.join(root, `_site/data/items/${id}.json`), "utf8"));

  it("gives each method its formula as MathML, save the one that takes a number as it stands", () => {
    const without = chapters().filter((chapter) => !chapter.includes("<math"));
    expect(without.map((chapter) => chapter.split('"')[0])).toEqual(["documented"]);
  });

  it("shows what is counted by an example that says it is invented, in every language", () => {
    for (const id of counted) {
      const chapter = chapters().find((text) => text.startsWith(`${id}"`));
      expect(chapter, id).toContain(`<dt>${english.pages.methods.worked}</dt>`);
      for (const { pages } of [english, german]) expect(pages.methods[id].worked, id).toMatch(/\d/);
    }
  });

  it("shows a number that is taken as it stands by its source", () => {
    expect(page()).toContain("Made: Ledger, page 88 gives <b>226</b>");
  });

  it("reckons completeness as its example does: 6 to 9 of 10, 2 to 3 of 4", () => {
    const { completeness } = itemOf("parts");
    expect(completeness).toMatchObject({
      weighted: { low: 0.6, high: 0.9 },
      counted: { low: 2, high: 3, expected: 4 },
    });
    expect(english.pages.methods.completeness.worked).toMatch(/60% to 90%; by count 2 to 3 of 4/);
  });

  it("is left with as much doubt as its example: 1 bit, and 3/4 of log2 3", () => {
    const [silver, platinum] = [["silver"], ["platinum"]];
    expect(expectedEntropy([silver, silver, platinum, platinum])).toBeCloseTo(1, 12);
    expect(expectedEntropy([silver, platinum, platinum, platinum])).toBeCloseTo((3 * Math.log2(3)) / 4, 12);
    expect(english.pages.methods.identification.worked).toContain("log₂ 3 = 1.19");
    expect(german.pages.methods.identification.worked).toContain("log₂ 3 = 1,19");
  });

  it("needs three features for the five variants of its example: two of two values tell four apart", () => {
    const rows = ["11001", "01101", "00111", "10011", "00000"];
    const features = [0, 1, 2, 3, 4].map((at) => ({ id: `${at}`, effort: 1 }));
    const { sets } = separatingSets(
      features,
      rows.map((row) => ({
        id: row,
        values: new Map(features.map(({ id }, at) => [id, [row.charAt(at)]])),
      })),
    );
    expect(sets[0]).toHaveLength(3);
  });

  it.each([
    ["lamp-l", "earlier"],
    ["lamp-m", "fits"],
    ["lamp-n", "later"],
  ])("dates %s as its example does: %s", (id, verdict) => {
    expect(itemOf(id).dating.parts.lamp.verdict).toBe(verdict);
  });

  it("counts the years of custody of its example: 16 and 26 of 96, and a gap of 54 to 56", () => {
    const { provenance } = itemOf("hands");
    expect(provenance).toMatchObject({ documentedYears: 42, lifetimeYears: 96 });
    expect(provenance.gaps).toMatchObject([{ from: 1946, to: 2001, years: 54 }]);
    expect(Math.ceil(provenance.gaps[0].longest)).toBe(56);
  });

  it("finds the two examples of its example as alike as 7 of 12", () => {
    const kinds = [{ kind: "nominal" }, { kind: "nominal" }, { kind: "numeric", range: 1 }] as const;
    expect(gower(["red", "old", 3 / 4], ["red", "new", 1], kinds).likeness).toBeCloseTo(7 / 12, 12);
    expect(english.pages.methods.likeness.worked).toContain("58%");
  });
});
