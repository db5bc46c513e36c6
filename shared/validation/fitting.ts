import type { ErrorObject } from "ajv";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { type Path, type SourceDocument, withoutAll } from "../source/document.ts";
import { fieldsOf } from "./few-fields.ts";
import { pathOf } from "./path-of.ts";
import type { Validate } from "./validator.ts";

/** What is left of a list may be too short for it; so it is gone through again, but not for ever. */
const mostRounds = 6;

/** A record without what does not fit, so that all else in it can be held against other records; what it lacks, it lacks. */
export function fittingPart(
  document: SourceDocument,
  errors: readonly ErrorObject[],
  validate: Validate,
): SourceDocument {
  let paths = errors.flatMap(leftOutBy);
  for (let round = 0; round < mostRounds; round++) {
    const part = withoutAll(document, paths);
    const more = validate(part)
      .flatMap(leftOutBy)
      .filter((path) => isThere(part.data, path) || !part.leftOut.touches(path));
    if (more.length === 0) return part;
    paths = [...paths, ...more.map((path) => part.leftOut.placeBefore(path))];
  }
  return withoutAll(document, [[]]);
}

function isThere(data: unknown, path: Path): boolean {
  let value = data;
  return path.every((name) => {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, name)) return false;
    value = (value as Readonly<Record<string, unknown>>)[name];
    return true;
  });
}

/** Places of which nothing is known, since something does not fit. */
function leftOutBy(error: ErrorObject): Path[] {
  const path = pathOf(error.instancePath);
  switch (error.keyword) {
    case "required":
      return [[...path, String(error.params.missingProperty)]];
    case "additionalProperties":
      return strange(path, String(error.params.additionalProperty), error);
    // These only sum up other errors.
    case "if":
    case "propertyNames":
    case "allOf":
    case "anyOf":
    case "oneOf":
      return [];
    default:
      return [error.propertyName === undefined ? path : [...path, error.propertyName]];
  }
}

/** A field that is not known may be one that is, misspelt: then what it says of that is not known either. */
function strange(path: Path, name: string, { data, parentSchema }: ErrorObject): Path[] {
  const isOfParts = path.length === 1 && (path[0] === "parts" || path[0] === "features");
  if (isOfParts) return [[...path, name]];
  if (fieldsOf(data as object).length === 0) return [path];
  const known = Object.keys((parentSchema?.properties as object | undefined) ?? {});
  const absent = known.filter((each) => !Object.hasOwn(data as object, each));
  const meant = nearestName(name, absent);
  return [name, ...(meant === undefined ? absent : [meant])].map((each) => [...path, each]);
}
