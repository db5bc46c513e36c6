import type { ErrorObject } from "ajv";
import type { DiagnosticCode } from "../diagnostics/catalogue.ts";
import { type Diagnostic, diagnose, type Finding } from "../diagnostics/diagnostic.ts";
import { nearestSuggestion, suggestion } from "../diagnostics/nearest-name.ts";
import { idSuggestion } from "../diagnostics/plain-words.ts";
import { typeNames } from "../diagnostics/type-names.ts";
import type { Path, SourceDocument } from "../source/document.ts";
import { fieldsOf } from "./few-fields.ts";
import { inWords } from "./in-words.ts";
import { pathOf } from "./path-of.ts";
import {
  amountRemedy,
  commaRemedy,
  dateRemedy,
  doubtRemedy,
  formRemedy,
  quotingRemedy,
  stateRemedy,
} from "./remedies.ts";

type SchemaObject = { [keyword: string]: unknown };

interface Explanation extends Finding {
  readonly code: DiagnosticCode;
  readonly path: Path;
  readonly at: "key" | "value";
}

/** Each schema violation as a person would put it: what stands there, what should, and how to mend it. */
export function diagnoseErrors(document: SourceDocument, errors: readonly ErrorObject[]): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const said = new Set<string>();
  // Where it is known which values there are, what kind of value they are says less.
  const withValues = new Set(
    errors.filter(({ keyword }) => keyword === "enum").map(({ instancePath }) => instancePath),
  );
  for (const error of errors) {
    if (error.keyword === "type" && withValues.has(error.instancePath)) continue;
    const explanation = explain(error);
    if (!explanation) continue;
    const { code, path, at, ...finding } = explanation;
    // Two branches of a schema may find the same fault.
    const key = JSON.stringify([code, path, finding.found, finding.expected]);
    if (said.has(key)) continue;
    said.add(key);
    diagnostics.push(diagnose(code, document.locate(path, at), finding));
  }
  return diagnostics;
}

const isMoney = (schema: SchemaObject) =>
  ["amount", "currency"].every((name) => namesOf(schema).includes(name));

/** Itself, or by the name that the schemas have for it. */
const isPersonName = (schema: SchemaObject) =>
  String(schema.$ref).endsWith("#/$defs/person") ||
  ["family", "given"].every((name) => namesOf(schema).includes(name));

/** The line of a part is one of its states, in itself or within a mapping. */
const isState = (path: Path, schema: SchemaObject) =>
  path[0] === "parts" && [schema.type].flat().includes("object") && [schema.type].flat().includes("string");

function typeRemedy(error: ErrorObject, path: Path, schema: SchemaObject): string | undefined {
  if (isMoney(schema)) return amountRemedy(error.data);
  if (isState(path, schema)) return stateRemedy(error.data);
  const isList = error.params.type === "array";
  const isPerson = isPersonName(isList ? ((schema.items ?? {}) as SchemaObject) : schema);
  // A list of other mappings is none of texts.
  const isOfMappings = isList && (schema.items as SchemaObject | undefined)?.type === "object";
  return formRemedy(error.data, isList && (isPerson || !isOfMappings), isPerson) ?? quotingRemedy(error);
}

const namesOf = (schema: SchemaObject) => Object.keys((schema.properties as object | undefined) ?? {});

function unknownField(error: ErrorObject, path: Path, schema: SchemaObject): Explanation | null {
  const name = String(error.params.additionalProperty);
  // What the reader makes of a mapping that stands where the name of a field should.
  if (name === String({})) {
    return {
      code: "yaml-syntax",
      path,
      at: "key",
      found: "a mapping as the name of a field",
      expected: "a word",
    };
  }
  const cut = textCutByComma(error.data as object, name, schema);
  // What several commas cut off is told of once.
  if (cut && cut.pieces[0] !== name) return null;
  const [code, expected] = unknownName(path);
  return {
    code,
    path: [...path, name],
    at: "key",
    found: `"${name}"`,
    expected,
    remedy:
      (cut && commaRemedy(cut.field, [cut.text, ...cut.pieces].join(", "))) ??
      suggestion(name, namesOf(schema), (known) => Object.hasOwn(error.data as object, known)) ??
      fieldsInWords(namesOf(schema)),
  };
}

/**
 * In braces a comma ends a text, and what stands behind it becomes the name of a field without a value: the field whose text
 * was cut, and all the pieces that were cut off it. One word alone may be a field that was meant as one.
 */
function textCutByComma(mapping: object, name: string, { properties = {} }: SchemaObject) {
  const known = properties as Readonly<Record<string, SchemaObject>>;
  const fields = fieldsOf(mapping);
  const isPiece = ([field, value]: [string, unknown]) => value === null && !Object.hasOwn(known, field);
  const at = fields.findIndex(([field]) => field === name);
  const before = fields.slice(0, at).findLastIndex((each) => !isPiece(each));
  const [field = "", text] = fields[before] ?? [];
  const behind = fields.slice(before + 1);
  const end = behind.findIndex((each) => !isPiece(each));
  const pieces = behind.slice(0, end < 0 ? undefined : end).map(([piece]) => piece);
  const takesText =
    Object.hasOwn(known, field) && /\/\$defs\/(?:text|line)$/.test(String(known[field]?.$ref));
  const isText = typeof text === "string" && [text, ...pieces].some((each) => each.trim().includes(" "));
  return takesText && isText && pieces.includes(name) ? { field, text, pieces } : undefined;
}

/** Of a record with many fields the list helps nobody: `schemas` has them. */
const fieldsInWords = (names: readonly string[]): string | undefined =>
  names.length === 0 || names.length > 14
    ? undefined
    : `It takes ${names.map((name) => `"${name}"`).join(", ")}.`;

function explain(error: ErrorObject): Explanation | null {
  const path = pathOf(error.instancePath);
  const schema = (error.parentSchema ?? {}) as SchemaObject;
  // Of the mapping around it nothing is said, which of a damaged one with a thousand such fields would take long.
  if (error.keyword === "additionalProperties") return unknownField(error, path, schema);
  const found = inWords(error.data);
  const value = { path, at: "value" as const };
  switch (error.keyword) {
    case "required": {
      const name = String(error.params.missingProperty);
      return {
        code: "missing-field",
        path,
        at: "key",
        found: `no field "${name}"`,
        expected: "one",
      };
    }
    case "type":
      return {
        code: "wrong-type",
        ...value,
        found,
        expected: typeInWords(error.params.type),
        remedy: typeRemedy(error, path, schema),
      };
    case "enum":
    case "const": {
      // A number, or true or false, may be typed as text, and reads the same.
      const allowed = [...new Set(((schema.enum as unknown[]) ?? [schema.const]).map(String))];
      const isPart = schema.title === "part";
      // What the message names already is not named again.
      const suggested = isPart || allowed.length > fewValues ? suggestion : nearestSuggestion;
      const isFeature = path[0] === "features" && path.length === 2;
      return {
        code: isPart ? "unknown-part" : "wrong-value",
        ...value,
        found,
        expected: isPart ? "a part of the variant" : oneOf(allowed),
        remedy:
          (isFeature ? doubtRemedy(error.data) : undefined) ??
          (typeof error.data === "object" ? undefined : suggested(String(error.data), allowed)),
      };
    }
    case "format":
      // What does not begin as it should is told of by its pattern.
      if (schema.pattern !== undefined && !new RegExp(String(schema.pattern), "u").test(String(error.data)))
        return null;
      return schema.format === "edtf"
        ? {
            code: "wrong-date",
            ...value,
            found,
            expected: 'a date as EDTF (ISO 8601-2), such as "1931", "1931/1938" or "1931-03~"',
            remedy: dateRemedy(String(error.data)),
          }
        : { code: "wrong-value", ...value, found, expected: "an address (URI)" };
    case "pattern":
      // Where there is nothing, that alone is told of.
      if (error.data === "" && schema.minLength !== undefined) return null;
      return pattern(error, path, schema, found);
    case "minimum":
    case "maximum":
    case "exclusiveMinimum":
    case "exclusiveMaximum":
      return schema.format === "edtf"
        ? {
            code: "wrong-date",
            ...value,
            found,
            expected: "a year of four digits, or a date in quotation marks",
          }
        : { code: "out-of-range", ...value, found, expected: `a number ${bounds(schema)}` };
    case "minLength":
    case "minItems":
    case "minProperties":
      return { code: "wrong-value", ...value, found, expected: "something" };
    case "maxLength":
    case "maxItems":
      return { code: "wrong-value", ...value, found, expected: `at most ${error.params.limit}` };
    case "uniqueItems":
      return { code: "wrong-value", ...value, found: "the same value twice", expected: "each value once" };
    case "not": {
      const name = excluded(schema).find((each) => Object.hasOwn(Object(error.data), each));
      return {
        code: "wrong-value",
        path: name === undefined ? path : [...path, name],
        at: "key",
        found: name === undefined ? found : `"${name}" as well`,
        expected: String(schema.description ?? "another value"),
      };
    }
    // These only sum up other errors of the same value.
    case "if":
    case "propertyNames":
    case "allOf":
    case "anyOf":
    case "oneOf":
      return null;
    default:
      return { code: "wrong-value", ...value, found, expected: `what "${error.keyword}" asks for` };
  }
}

/** The fields that may not stand beside others. */
const excluded = ({ not }: SchemaObject): string[] =>
  ((not as { anyOf?: { required?: string[] }[] } | undefined)?.anyOf ?? []).flatMap(
    ({ required }) => required ?? [],
  );

function unknownName(path: Path): [DiagnosticCode, string] {
  if (path.length === 1 && path[0] === "parts") return ["unknown-part", "a part of the variant"];
  if (path.length === 1 && path[0] === "features") return ["unknown-feature", "a feature of the family"];
  return ["unknown-field", "a known field"];
}

function pattern(error: ErrorObject, path: Path, schema: SchemaObject, found: string): Explanation {
  const name = error.propertyName;
  const isId = String(schema.pattern).startsWith("^[a-z0-9]");
  if (isId) {
    const expected = "small letters, digits and single hyphens";
    return name === undefined
      ? { code: "wrong-id", path, at: "value", found, expected, remedy: idSuggestion(String(error.data)) }
      : {
          code: "wrong-id",
          path: [...path, name],
          at: "key",
          found: `"${name}"`,
          expected,
          remedy: idSuggestion(name),
        };
  }
  const inOneLine = String(error.data).trim().replaceAll("\n", " ");
  if (inOneLine !== error.data && new RegExp(String(schema.pattern), "u").test(inOneLine))
    return { code: "wrong-value", path, at: "value", found, expected: "one line" };
  const examples = schema.examples as unknown[] | undefined;
  const like = examples?.[0] === undefined ? "another form" : `the form of ${inWords(examples[0])}`;
  return { code: "wrong-value", path, at: "value", found, expected: like };
}

function bounds(schema: SchemaObject): string {
  const bound = [
    schema.minimum !== undefined && `at least ${schema.minimum}`,
    schema.exclusiveMinimum !== undefined && `above ${schema.exclusiveMinimum}`,
    schema.maximum !== undefined && `at most ${schema.maximum}`,
    schema.exclusiveMaximum !== undefined && `below ${schema.exclusiveMaximum}`,
  ];
  return bound.filter(Boolean).join(" and ");
}

const names: Readonly<Record<string, string>> = typeNames;

const typeInWords = (type: unknown): string =>
  [type]
    .flat()
    .map((each) => names[String(each)] ?? String(each))
    .join(" or ");

/** More than these nobody reads in one line. */
const fewValues = 8;

const oneOf = (allowed: readonly string[]): string => {
  if (allowed.length > fewValues) return `one of its ${allowed.length} values`;
  const named = allowed.map((value) => `"${value}"`);
  return named.length < 2 ? named.join() : `${named.slice(0, -1).join(", ")} or ${named.at(-1)}`;
};
