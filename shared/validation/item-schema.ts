import type { JsonSchema } from "../source/record-schemas.ts";

interface Described {
  readonly id: string;
  readonly parts: ReadonlyMap<string, { readonly name: string }>;
}

interface FeatureValues {
  readonly name: string;
  readonly values: readonly string[];
}

/** The item schema, narrowed to the parts and features of one variant: what its reference lists, and nothing else. */
export function itemSchemaFor(
  itemSchema: JsonSchema,
  variant: Described,
  features: ReadonlyMap<string, FeatureValues>,
): JsonSchema {
  const partState = { $ref: `${itemSchema.$id}#/$defs/partState` };
  // An empty enum is no schema; a variant without parts simply refuses every part.
  const part = variant.parts.size > 0 ? { title: "part", enum: [...variant.parts.keys()] } : false;
  const pointing = { type: "array", items: { type: "object", properties: { part } } };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    $id: itemSchema.$id.replace("item.schema.json", `items/${variant.id}.schema.json`),
    title: `Item of ${variant.id}`,
    allOf: [{ $ref: itemSchema.$id }],
    properties: {
      parts: {
        type: ["object", "null"],
        properties: Object.fromEntries(
          [...variant.parts].map(([id, { name }]) => [id, { ...partState, description: name }]),
        ),
        additionalProperties: false,
      },
      features: {
        type: ["object", "null"],
        properties: Object.fromEntries(
          [...features].map(([id, { name, values }]) => [
            id,
            { description: name, enum: values.flatMap(typings) },
          ]),
        ),
        additionalProperties: false,
      },
      labels: pointing,
      assembled: { type: "array", items: part },
      photos: { type: "array", items: { type: "object", properties: { callouts: pointing } } },
      video: { type: "object", properties: { moments: pointing } },
    },
  };
}

/**
 * Whether an item that fits the item schema names only what its variant has: then it fits the narrowed schema, too,
 * which need not be compiled for it. `tests/validation` holds the two to each other.
 */
export function namesOnlyKnown(
  data: unknown,
  variant: Described,
  features: ReadonlyMap<string, FeatureValues>,
): boolean {
  const item = fieldsOf(data);
  const isPart = (id: unknown): boolean => typeof id === "string" && variant.parts.has(id);
  const points = (list: unknown): boolean =>
    listOf(list).every((entry) => {
      const { part } = fieldsOf(entry);
      return part === undefined || isPart(part);
    });
  return (
    Object.keys(fieldsOf(item.parts)).every(isPart) &&
    Object.entries(fieldsOf(item.features)).every(
      ([id, value]) => features.get(id)?.values.some((known) => typings(known).includes(value)) ?? false,
    ) &&
    listOf(item.assembled).every(isPart) &&
    points(item.labels) &&
    listOf(item.photos).every((photo) => points(fieldsOf(photo).callouts)) &&
    points(fieldsOf(item.video).moments)
  );
}

const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>) : {};

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** A value may have been typed as a number or as true or false; the record keeps it as text. */
function typings(value: string): unknown[] {
  if (value === "true" || value === "false") return [value, value === "true"];
  return /^(?:0|-?[1-9]\d{0,14})$/.test(value) ? [value, Number(value)] : [value];
}
