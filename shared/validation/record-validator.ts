import { readRecordSchemas } from "../source/record-schemas.ts";
import { createValidator, type Validator } from "./validator.ts";

let compiled: Validator | undefined;

/** By the schemas that ship with the tool. Compiling them takes longer than reading a small collection: once. */
export function recordValidator(): Validator {
  compiled ??= createValidator(readRecordSchemas());
  return compiled;
}
