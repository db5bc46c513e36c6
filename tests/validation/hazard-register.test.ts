import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { repository } from "../commands/run.ts";

interface Hazard {
  name: string;
  caution: string;
  in: { de: { name: string; caution: string } };
  source: string;
  note?: string;
}

const register = new Map(
  Object.entries(
    parse(readFileSync(path.join(repository, "schemas/hazards.yaml"), "utf8")) as Record<string, Hazard>,
  ),
);

/** What hurts people in old outfits. Common practice, no source. */
const asked = [
  "mercury",
  "radium",
  "thoriated-glass",
  "cellulose-nitrate",
  "old-cells",
  "flash-lamps",
  "flash-capacitors",
  "lead",
  "arsenic",
  "asbestos",
  "protected-materials",
  "weapons",
  "solvents",
];

describe("the register of hazards that comes with the tool", () => {
  it.each(asked)("has %s", (id) => {
    expect(register.has(id)).toBe(true);
  });

  it.each([...register])("%s: a caution, its source, and who has the last word", (_, { caution, source }) => {
    expect(caution.length).toBeGreaterThan(60);
    expect(source.trim()).not.toBe("");
    expect(caution).toMatch(/local|licen[cs]ed|national|authority|qualified|conservator|permit|law/i);
  });

  it.each([...register])("%s: says the same in German", (_, { caution, in: { de } }) => {
    expect(de.caution).toMatch(/örtlich|zugelassen|national|Behörde|Fach|fachkundig|Recht|Vorschrift/);
    // As many sentences, and the same numbers.
    const sentences = (text: string) => text.match(/\.(?:\s|$)/g)?.length;
    expect(sentences(de.caution)).toBe(sentences(caution));
    expect(de.caution.match(/\d+/g)).toEqual(caution.match(/\d+/g));
  });
});
