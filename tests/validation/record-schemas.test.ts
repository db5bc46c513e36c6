import { Ajv2020 } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";
import { describe, expect, it } from "vitest";
import { parseEdtf } from "../../shared/dates/edtf-interval.ts";
import { readRecordSchemas } from "../../shared/source/record-schemas.ts";

type Schema = { [keyword: string]: unknown };

const schemas = readRecordSchemas();

/** Every field that a schema names, with the way to it. */
function fieldsIn(schema: unknown, path: string): [string, Schema][] {
  if (typeof schema !== "object" || schema === null) return [];
  return Object.entries(schema).flatMap(([keyword, value]) => {
    if (keyword === "examples") return [];
    const within = fieldsIn(value, `${path}/${keyword}`);
    if (keyword !== "properties") return within;
    const fields = Object.entries(value as Record<string, Schema>).map(([name, field]): [string, Schema] => [
      `${path}/properties/${name}`,
      field,
    ]);
    return [...fields, ...within];
  });
}

const fields = [...schemas].flatMap(([name, schema]) => fieldsIn(schema, name));

describe("the schemas of the records", () => {
  // JSON Schema 2020-12, by the meta-schema that ajv carries.
  it("are JSON Schema 2020-12", () => {
    const ajv = new Ajv2020({ strict: false });
    for (const schema of schemas.values()) expect(ajv.validateSchema(schema), schema.$id).toBe(true);
  });

  it("describe every field, with an example", () => {
    const silent = fields.filter(([, { description, examples }]) => !description || !Array.isArray(examples));
    expect(silent.map(([path]) => path)).toEqual([]);
    expect(fields.length).toBeGreaterThan(100);
  });

  it("give examples that their own fields take", () => {
    const ajv = new Ajv2020({ strict: false });
    ajvFormats.default(ajv, ["uri"]);
    ajv.addFormat("edtf", (text) => parseEdtf(text) !== null);
    for (const schema of schemas.values()) ajv.addSchema(schema);
    const wrong: string[] = [];
    for (const [path, field] of fields) {
      const [file = "", ...pointer] = path.split("/");
      const validate = ajv.compile({ $ref: `${schemas.get(file)?.$id}#/${pointer.join("/")}` });
      for (const example of field.examples as unknown[]) {
        if (!validate(example))
          wrong.push(`${path}: ${JSON.stringify(example)} ${ajv.errorsText(validate.errors)}`);
      }
    }
    expect(wrong).toEqual([]);
  });
});
