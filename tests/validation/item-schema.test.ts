import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readRecordSchemas } from "../../shared/source/record-schemas.ts";
import { itemSchemaFor, namesOnlyKnown } from "../../shared/validation/item-schema.ts";
import { createValidator } from "../../shared/validation/validator.ts";

const schemas = readRecordSchemas();
const validator = createValidator(schemas);
const itemSchema = schemas.get("item");
if (!itemSchema) throw new Error("No schema of items.");

const variant = {
  id: "no-1",
  parts: new Map([
    ["case", { name: "Case" }],
    ["constructor", { name: "A part with an unlucky id" }],
  ]),
};
const features = new Map([
  ["lid", { name: "Lid", values: ["domed", "flat"] }],
  ["holes", { name: "Holes", values: ["4", "true", "0118"] }],
]);
const narrowed = validator.by(itemSchemaFor(itemSchema, variant, features));
const shared = validator.of("item");

const partId = fc.constantFrom("case", "constructor", "lamp", "__proto__", "toString", "");
const pointing = fc.array(fc.record({ part: partId, text: fc.constant("N") }, { requiredKeys: ["text"] }), {
  maxLength: 2,
});
const callouts = fc.array(fc.record({ x: fc.constant(0.5), y: fc.constant(0.5), part: partId }), {
  maxLength: 2,
});
const moments = fc.array(fc.record({ at: fc.constant(3), text: fc.constant("Opened"), part: partId }), {
  maxLength: 2,
});
/** Ids as own keys, `__proto__` too, as YAML reads them. */
const fieldsOf = <Value>(key: fc.Arbitrary<string>, value: fc.Arbitrary<Value>) =>
  fc.array(fc.tuple(key, value), { maxLength: 3 }).map((entries) => Object.fromEntries(entries));

const anyItem = fc.record(
  {
    title: fc.constant("An outfit"),
    variant: fc.constant("no-1"),
    parts: fc.option(fieldsOf(partId, fc.constantFrom("present", { state: "absent" }))),
    features: fc.option(
      fieldsOf(
        fc.constantFrom("lid", "holes", "hinge", "constructor"),
        fc.constantFrom("domed", "flat", "4", 4, true, "true", "0118", 118, "5"),
      ),
    ),
    labels: pointing.map((list) => list.map((each) => ({ where: "lid", kind: "plate", ...each }))),
    assembled: fc.array(partId, { maxLength: 2 }),
    photos: fc.array(
      callouts.map((list) => ({ src: "a.jpg", alt: "The case", callouts: list })),
      { maxLength: 2 },
    ),
    video: moments.map((list) => ({ src: "a.webm", caption: "Opened", moments: list })),
  },
  { requiredKeys: ["title", "variant"] },
);

const document = (data: unknown) => ({
  file: "content/items/a.md",
  data,
  body: "",
  locate: () => ({
    place: { file: "content/items/a.md", line: 1, column: 1, endLine: 1, endColumn: 2 },
    text: "",
  }),
});

describe("an item that fits what all items share", () => {
  it("names only what its variant has exactly where JSON Schema, narrowed to the variant, accepts it", () => {
    let accepted = 0;
    let refused = 0;
    fc.assert(
      fc.property(anyItem, (data) => {
        fc.pre(shared(document(data)).length === 0);
        // The reference is ajv, an implementation of JSON Schema 2020-12.
        const isSound = narrowed(document(data)).length === 0;
        if (isSound) accepted++;
        else refused++;
        expect(namesOnlyKnown(data, variant, features)).toBe(isSound);
      }),
      { numRuns: 500 },
    );
    expect(Math.min(accepted, refused)).toBeGreaterThan(20);
  });
});
