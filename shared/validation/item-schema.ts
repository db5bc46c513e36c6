import type { JsonSchema } from "../source/record-schemas.ts";

interface Described {
  readonly id: string;
  readonly parts: ReadonlyMap<string, { readonly name: string }>;
}

interface FeatureValues {
  readonly name: string;
  /** None where they could not be read. */
  readonly values: readonly string[];
}

/** Whether there may be more parts or features than those that could be read: then none is refused. */
interface MayHaveMore {
  readonly parts: boolean;
  readonly features: boolean;
}

const noMore: MayHaveMore = { parts: false, features: false };

/** The item schema, narrowed to the parts and features of one variant: what its reference lists, and nothing else. */
export function itemSchemaFor(
  itemSchema: JsonSchema,
  variant: Described,
  features: ReadonlyMap<string, FeatureValues>,
  more = noMore,
) {
  const partState = { $ref: `${itemSchema.$id}#/$defs/partState` };
  // An empty enum is no schema; a variant without parts simply refuses every part.
  const known = variant.parts.size > 0 ? { title: "part", enum: [...variant.parts.keys()] } : false;
  const part = more.parts || known;
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
        additionalProperties: more.parts,
      },
      features: {
        type: ["object", "null"],
        properties: Object.fromEntries(
          [...features].map(([id, { name, values }]) => [
            id,
            { description: name, ...(values.length > 0 ? { enum: values.flatMap(typings) } : {}) },
          ]),
        ),
        additionalProperties: more.features,
      },
      labels: pointing,
      assembled: { type: "array", items: part },
      photos: { type: "array", items: { type: "object", properties: { callouts: pointing } } },
      video: { type: "object", properties: { moments: pointing } },
    },
  } satisfies JsonSchema;
}

/**
 * Whether an item that fits the item schema names only what its variant has: then it fits the narrowed schema, too,
 * which need not be compiled for it. `tests/validation` holds the two to each other.
 */
export function namesOnlyKnown(
  data: unknown,
  variant: Described,
  features: ReadonlyMap<string, FeatureValues>,
  more = noMore,
): boolean {
  const item = fieldsOf(data);
  const isPart = (id: unknown): boolean => more.parts || (typeof id === "string" && variant.parts.has(id));
  const isValue = ([id, value]: [string, unknown]): boolean => {
    const values = features.get(id)?.values;
    if (!values) return more.features;
    return values.length === 0 || values.some((known) => typings(known).includes(value));
  };
  const points = (list: unknown): boolean =>
    listOf(list).every((entry) => {
      const { part } = fieldsOf(entry);
      return part === undefined || isPart(part);
    });
  return (
    Object.keys(fieldsOf(item.parts)).every(isPart) &&
    Object.entries(fieldsOf(item.features)).every(isValue) &&
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
