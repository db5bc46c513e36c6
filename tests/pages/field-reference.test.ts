import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { fieldReference } from "../../shared/publication/field-reference.ts";
import { readRecordSchemas } from "../../shared/source/record-schemas.ts";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";
import type { Words } from "../../shared/words/words.ts";
import { repository } from "../commands/run.ts";

const referenceIn = ({ pages }: Words) =>
  new Map(
    fieldReference(readRecordSchemas(), pages.fields.takes).map((record) => [record.id, record] as const),
  );
const records = referenceIn(english);
const pathsOf = (id: string) => records.get(id)?.fields.map((field) => field.path) ?? [];

/** Every name that stands directly below "properties" in a schema's own text, at whatever depth. */
function namesIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) =>
    key === "properties" && typeof below === "object" && below !== null
      ? [...Object.keys(below), ...Object.values(below).flatMap(namesIn)]
      : namesIn(below),
  );
}

describe("the field reference", () => {
  it.each(["collection", "family", "variant", "item", "sighting", "source", "article", "hazard", "scale"])(
    "has every field of the schema of %s, each with what it takes and means",
    (id) => {
      const schema: unknown = JSON.parse(
        readFileSync(path.join(repository, `schemas/records/${id}.schema.json`), "utf8"),
      );
      const last = new Set(pathsOf(id).map((each) => each.split(".").at(-1)?.replaceAll("[]", "")));
      for (const name of namesIn(schema)) expect([...last], name).toContain(name);
      for (const { path: of, takes, meaning } of records.get(id)?.fields ?? []) {
        expect(takes, of).not.toBe("");
        expect(meaning, of).toMatch(/[.:]/);
      }
      expect(new Set(pathsOf(id)).size).toBe(pathsOf(id).length);
    },
  );

  // Fields that the contract names.
  it.each([
    ["item", "parts.ID.quantity"],
    ["item", "photos[].callouts[].at"],
    ["item", "provenance[].private"],
    ["variant", "parts.ID.accepts[].credit"],
    ["variant", "levels[].needs.standing"],
    ["variant", "made.count"],
    ["family", "features.ID.look"],
    ["collection", "publish.serial"],
    ["sighting", "relisted"],
  ])("of %s names %s", (id, field) => {
    expect(pathsOf(id)).toContain(field);
  });

  it("says what must be there and what a field takes", () => {
    const of = (field: string) => records.get("item")?.fields.find((each) => each.path === field);
    expect(of("title")).toMatchObject({ required: true, takes: "one line of text" });
    expect(of("status")).toMatchObject({
      required: false,
      takes: "collection, offered, sold, reference, lost, stolen or destroyed",
      example: "collection",
    });
  });

  it("heads each kind of record in the language of the site, in English as its schema does", () => {
    const titles = Object.fromEntries([...records.values()].map(({ id, name }) => [id, name]));
    expect(english.pages.fields.records).toEqual(titles);
    expect(Object.keys(german.pages.fields.records)).toEqual(Object.keys(titles));
  });

  it("says in the language of the site what a field takes, and keeps the words that are to be typed", () => {
    const inGerman = referenceIn(german);
    const takes = (record: string, field: string) =>
      inGerman.get(record)?.fields.find((each) => each.path === field)?.takes;
    expect(takes("item", "title")).toBe("eine Zeile Text");
    expect(takes("item", "status")).toBe("collection, offered, sold, reference, lost, stolen oder destroyed");
    expect(takes("item", "assembled")).toBe("eine Liste, jeder Eintrag eine Kennung");
    expect(takes("item", "census")).toBe("true oder false");
    expect(takes("variant", "parts.ID.accepts[].credit")).toBe("eine Zahl, mindestens 0 und höchstens 1");
    for (const { fields } of inGerman.values())
      for (const { path: of, takes: said } of fields) expect(said, of).not.toMatch(/\b(?:a|an|or|list|at)\b/);
  });
});
