import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { states, statuses } from "../../shared/terms/states.ts";

/** Every list of choices that a schema has, wherever it stands in it. */
function choicesIn(node: unknown): string[][] {
  if (typeof node !== "object" || node === null) return [];
  const own = "enum" in node && Array.isArray(node.enum) ? [node.enum] : [];
  return [...own, ...Object.values(node).flatMap(choicesIn)];
}

const schema: unknown = JSON.parse(
  readFileSync(new URL("../../schemas/records/item.schema.json", import.meta.url), "utf8"),
);

it.each([
  ["a part", states],
  ["an item", statuses],
])("what may be said of %s is what the schema lets be said", (_, known) => {
  expect(choicesIn(schema)).toContainEqual([...known]);
});
