import { readFileSync } from "node:fs";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { pilotageFolder } from "./pilotage.ts";
import { repository } from "./run.ts";
import { runHere } from "./run-here.ts";

function compiled(root: string, name: string, out = "editor-schemas") {
  const schema = JSON.parse(readFileSync(path.join(root, out, `${name}.schema.json`), "utf8"));
  // A fresh one each time: every file must stand by itself, as it does in an editor.
  const ajv = new Ajv2020({ strict: false, allErrors: true, formats: { edtf: true, uri: true } });
  return { schema, validate: ajv.compile(schema) };
}

describe("fittedcase schemas", () => {
  it("offers the collection's own parts, values, variants and sources", async () => {
    const root = pilotageFolder();
    const { code, out } = await runHere(["schemas"], root);
    expect(code).toBe(0);
    const settings = JSON.parse(out.slice(out.indexOf("{")))["yaml.schemas"];
    expect(settings["./editor-schemas/item.schema.json"]).toContain("content/items/*/index.md");
    const { schema, validate } = compiled(root, "item");
    expect(schema.properties.variant.enum).toEqual(["pilot-mk1", "pilot-mk2"]);
    const sound = {
      title: "One",
      variant: "pilot-mk2",
      parts: { sextant: "present" },
      features: { arc: "silver" },
    };
    expect(validate(sound)).toBe(true);
    expect(validate({ ...sound, parts: { sextent: "present" } })).toBe(false);
    expect(validate({ ...sound, variant: "pilot-mk1", parts: { shade: "present" } })).toBe(false);
    expect(validate({ ...sound, features: { arc: "gold" } })).toBe(false);
    expect(validate({ ...sound, provenance: [{ date: 1999, event: "sold", source: "works-ledgr" }] })).toBe(
      false,
    );
    const second = schema.allOf.find(
      (each: { if: { properties: { variant: { const: string } } } }) =>
        each.if.properties.variant.const === "pilot-mk2",
    );
    expect(second.then.properties.parts.properties.sextant.description).toBe(
      "Sextant (core). Look below the arc: a number.",
    );
  });

  it("refers to nothing outside of each file", async () => {
    const root = pilotageFolder();
    await runHere(["schemas", "--out", "elsewhere"], root);
    for (const name of [
      "collection",
      "item",
      "article",
      "sightings",
      "sources",
      "family",
      "variant",
      "hazards",
      "scale",
    ]) {
      const text = readFileSync(path.join(root, `elsewhere/${name}.schema.json`), "utf8");
      expect(text).not.toMatch(/"\$ref": "[^#]/);
      expect(() => compiled(root, name, "elsewhere")).not.toThrow();
    }
  });

  it("takes every record of the demonstration collection", async () => {
    const out = path.join(pilotageFolder(), "schemas-out");
    await runHere(["schemas", "--root", repository, "--out", out], "/");
    const { sound } = checkCollection(repository);
    expect(sound).not.toBeNull();
    const { validate } = compiled("/", "item", out);
    for (const { id, document } of sound?.collection.items.values() ?? []) {
      expect(validate(document.data), `${id}: ${JSON.stringify(validate.errors?.slice(0, 2))}`).toBe(true);
    }
    const variant = compiled("/", "variant", out).validate;
    for (const { document } of sound?.collection.variants.values() ?? [])
      expect(variant(document.data)).toBe(true);
    const family = compiled("/", "family", out).validate;
    for (const { document } of sound?.collection.families.values() ?? [])
      expect(family(document.data)).toBe(true);
  });

  it.each([
    [["schemas", "--out", "content/x"], 2],
    [["schemas", "extra"], 2],
    [["schemas", "--help"], 0],
  ])("%j exits with %d", async (args, code) => {
    expect((await runHere(args, pilotageFolder())).code).toBe(code);
  });
});
