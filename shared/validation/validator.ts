import { Ajv2020, type ErrorObject, type ValidateFunction } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";
import { parseEdtf } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import type { JsonSchema } from "../source/record-schemas.ts";

/** What in a document does not fit, as the schema has it; `diagnoseErrors` says it to people. */
export type Validate = (document: Pick<SourceDocument, "data">) => readonly ErrorObject[];

export interface Validator {
  readonly schemas: ReadonlyMap<string, JsonSchema>;
  /** Holds documents against the schema of a kind of record. */
  readonly of: (kind: string) => Validate;
  /** Holds documents against a schema made for the occasion, such as that of one variant's items. */
  readonly by: (schema: JsonSchema) => Validate;
}

/** Compiling takes longer than most records do, and a preview asks again with every change for all but one. */
const mostOccasional = 50;

export function createValidator(schemas: ReadonlyMap<string, JsonSchema>): Validator {
  const ajv = new Ajv2020({
    allErrors: true,
    // A part may have the id "constructor", which every object inherits something by.
    ownProperties: true,
    verbose: true,
    allowUnionTypes: true,
    strictTypes: false,
    strictTuples: false,
    strictRequired: false,
    // Found values are quoted in messages, so a deep or circular one must not be printed by the library.
    messages: false,
    // Ours are held against their meta-schema by a test. Both this and tidier code cost every command a tenth of a second.
    validateSchema: false,
    code: { optimize: false },
  });
  ajvFormats.default(ajv, ["uri"]);
  ajv.addFormat("edtf", (text) => parseEdtf(text) !== null);
  for (const schema of schemas.values()) ajv.addSchema(schema);
  const occasional = new Map<string, ValidateFunction>();
  const holding =
    (validate: ValidateFunction): Validate =>
    ({ data }) =>
      validate(data) ? [] : (validate.errors ?? []);
  return {
    schemas,
    of(kind) {
      const id = schemas.get(kind)?.$id;
      const validate = id === undefined ? undefined : ajv.getSchema(id);
      if (!validate) throw new Error(`No schema ships for records of kind "${kind}".`);
      return holding(validate);
    },
    by(schema) {
      const text = JSON.stringify(schema);
      const validate = occasional.get(text) ?? ajv.compile(schema);
      ajv.removeSchema(schema);
      occasional.delete(text);
      occasional.set(text, validate);
      for (const oldest of occasional.keys()) {
        if (occasional.size <= mostOccasional) break;
        occasional.delete(oldest);
      }
      return holding(validate);
    },
  };
}
