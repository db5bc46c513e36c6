import type { Collection } from "../../records/collection.ts";
import type { JsonSchema } from "../../source/record-schemas.ts";
import { itemSchemaFor } from "../../validation/item-schema.ts";

type Node = { readonly [keyword: string]: unknown };

/** A schema for an editor, and the files that it is for, as globs from the collection's folder. */
export interface EditorSchema {
  readonly name: string;
  readonly files: readonly string[];
  readonly schema: Node;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** An editor looks for nothing outside the file that it is given, so every reference is made a local one. */
function local(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(local);
  if (!isNode(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([keyword, each]) => !(keyword === "$id" && typeof each === "string"))
      .map(([keyword, each]) => [
        keyword,
        keyword === "$ref" && typeof each === "string" ? each.replace(/^[^#]*#/, "#") : local(each),
      ]),
  );
}

type Ids = readonly string[];

/** What a collection can point at. */
interface Known {
  readonly sources: Ids;
  readonly hazards: Ids;
  readonly variants: Ids;
  readonly scales: Ids;
}

const oneOf = (node: Node, ids: Ids): Node => {
  if (ids.length === 0) return node;
  const { $ref: _, ...rest } = node;
  return { ...rest, type: "string", enum: ids };
};

const isId = (node: unknown): node is Node => isNode(node) && String(node.$ref).endsWith("#/$defs/id");

/** Fields that name another record take the ids that there are, so that an editor can offer them. */
function pointing(value: unknown, known: Known): unknown {
  if (Array.isArray(value)) return value.map((each) => pointing(each, known));
  if (!isNode(value)) return value;
  const named: Readonly<Record<string, Ids>> = {
    source: known.sources,
    extends: known.variants,
    variant: known.variants,
    scale: known.scales,
  };
  const listed: Readonly<Record<string, Ids>> = { sources: known.sources, hazards: known.hazards };
  const properties = isNode(value.properties)
    ? Object.fromEntries(
        Object.entries(value.properties).map(([field, node]) => {
          const ids = Object.hasOwn(named, field) ? named[field] : undefined;
          if (ids && isId(node)) return [field, oneOf(node, ids)];
          const members = Object.hasOwn(listed, field) ? listed[field] : undefined;
          if (members && isNode(node) && isId(node.items)) {
            return [field, { ...node, items: oneOf(node.items, members) }];
          }
          return [field, pointing(node, known)];
        }),
      )
    : undefined;
  return Object.fromEntries(
    Object.entries(value).map(([keyword, each]) => [
      keyword,
      keyword === "properties" && properties ? properties : pointing(each, known),
    ]),
  );
}

/** The item schema with the parts and features of every variant, each in force where the item is held to be that one. */
function itemSchema(base: JsonSchema, { variants, families }: Collection): Node {
  const branches = [...variants.values()].map((variant) => {
    const features = families.get(variant.family)?.features ?? new Map();
    const { properties } = itemSchemaFor(base, variant, features);
    const described = (fields: Record<string, Node>, tell: (id: string) => string) =>
      Object.fromEntries(
        Object.entries(fields).map(([id, node]) => [id, { ...node, description: tell(id) }]),
      );
    const part = (id: string) => {
      const { name, standing, quantity, look } = variant.parts.get(id) ?? {};
      const count = quantity !== undefined && quantity > 1 ? `, ${quantity} of them` : "";
      return `${name} (${standing}${count}). ${look ?? ""}`.trim();
    };
    const feature = (id: string) => `${features.get(id)?.name}. ${features.get(id)?.look ?? ""}`.trim();
    return {
      if: { properties: { variant: { const: variant.id } }, required: ["variant"] },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: {
        properties: {
          ...properties,
          parts: { ...properties.parts, properties: described(properties.parts.properties, part) },
          features: {
            ...properties.features,
            properties: described(properties.features.properties, feature),
          },
        },
      },
    };
  });
  return { ...base, allOf: branches };
}

/** JSON Schemas (2020-12) for everything that is written by hand in a collection, with its own ids. */
export function editorSchemas(
  schemas: ReadonlyMap<string, JsonSchema>,
  collection: Collection,
): EditorSchema[] {
  const common = schemas.get("common")?.$defs as Node | undefined;
  const known: Known = {
    sources: [...collection.sources.keys()],
    hazards: [...collection.hazards.keys()],
    variants: [...collection.variants.keys()],
    scales: [...collection.scales.values()].filter(({ kind }) => kind === "rarity").map(({ id }) => id),
  };
  const of = (kind: string, change: (schema: JsonSchema) => Node = (schema) => schema): Node => {
    const schema = schemas.get(kind);
    if (!schema) throw new Error(`No schema ships for records of kind "${kind}".`);
    const changed = change(schema);
    const whole = { ...changed, $defs: { ...common, ...(changed.$defs as Node | undefined) } };
    return local(pointing(whole, known)) as Node;
  };
  /** A file of several records: a list, or a mapping of ids to records. */
  const severalOf = (kind: string, key: "id" | null): Node => {
    const { $defs, $schema, ...record } = of(kind);
    const required = (record.required as string[] | undefined)?.filter((field) => field !== key);
    const entries = { type: "object", additionalProperties: { ...record, required } };
    return { $schema, $defs, anyOf: [{ type: "array", items: record }, entries] };
  };
  const one = (name: string, files: readonly string[], schema: Node): EditorSchema => ({
    name,
    files,
    schema,
  });
  return [
    one("collection", ["content/collection.yaml"], of("collection")),
    one(
      "item",
      ["content/items/*.md", "content/items/*/index.md"],
      of("item", (base) => itemSchema(base, collection)),
    ),
    one("article", ["content/articles/*.md"], of("article")),
    one("sightings", ["content/sightings/*.yaml"], severalOf("sighting", null)),
    one("sources", ["content/sources.yaml", "content/sources.json"], severalOf("source", "id")),
    one("family", ["schemas/reference/*/family.yaml"], of("family")),
    one("variant", ["schemas/reference/*/*.yaml", "!schemas/reference/*/family.yaml"], of("variant")),
    one("hazards", ["schemas/hazards.yaml"], severalOf("hazard", null)),
    one("scale", ["schemas/scales/*.yaml"], of("scale")),
  ];
}
