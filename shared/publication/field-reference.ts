import type { JsonSchema } from "../source/record-schemas.ts";
import type { Words } from "../words/words.ts";

/** One field of a record, as its schema describes it. */
export interface FieldEntry {
  /** From the top of the record: "parts.ID.quantity", "photos[].alt". */
  readonly path: string;
  readonly takes: string;
  readonly required: boolean;
  readonly meaning: string;
  readonly example: string | null;
}

/** The fields of one kind of record. */
export interface RecordReference {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly fields: readonly FieldEntry[];
}

/** An upper bound that only keeps nonsense out says nothing to a reader. */
const beyondSense = 1_000_000;

type Node = Readonly<Record<string, unknown>>;

/** In the order in which somebody begins a collection. */
const order = ["collection", "family", "variant", "item", "sighting", "source", "article", "hazard", "scale"];

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const nodesOf = (value: unknown): [string, Node][] =>
  isNode(value) ? Object.entries(value).filter((entry): entry is [string, Node] => isNode(entry[1])) : [];

/** What stands in a mapping itself, and not in what every object has. */
const own = (names: Readonly<Record<string, string>>, name: string | null): string | undefined =>
  name !== null && Object.hasOwn(names, name) ? names[name] : undefined;

/**
 * Every field of every kind of record, read out of the schemas that validate them: what the documentation says is what
 * is checked. What a field takes is said in the language of the site, what it means in that of the schemas.
 */
export function fieldReference(
  schemas: ReadonlyMap<string, JsonSchema>,
  say: Words["pages"]["fields"]["takes"],
): RecordReference[] {
  const target = (
    node: Node,
    home: Node,
  ): { readonly node: Node; readonly home: Node; readonly form: string | null } => {
    const match = typeof node.$ref === "string" ? /^([^#]*)#\/\$defs\/(\w+)$/.exec(node.$ref) : null;
    if (!match) return { node, home, form: null };
    const [, file = "", form = ""] = match;
    const there = file === "" ? home : (schemas.get(file.replace(".schema.json", "")) ?? home);
    const found = isNode(there.$defs) ? there.$defs[form] : undefined;
    return { node: { ...(isNode(found) ? found : {}), ...node }, home: there, form };
  };

  const takes = (given: Node, home: Node): string => {
    const { node, form } = target(given, home);
    const named = own(say.forms, form);
    if (named !== undefined) return named;
    if (Array.isArray(node.enum)) return say.oneOf(node.enum.map(String));
    if (node.const !== undefined) return String(node.const);
    if (node.type === undefined) return say.anything;
    const types = [node.type]
      .flat()
      .map(String)
      .filter((type) => type !== "null");
    if (types.length === 1 && types[0] === "array" && isNode(node.items)) {
      const each = own(say.forms, target(node.items, home).form);
      if (each !== undefined) return say.listOf(each);
    }
    const bounds = [
      ...(typeof node.minimum === "number" ? [say.atLeast(node.minimum)] : []),
      ...(typeof node.maximum === "number" && node.maximum < beyondSense ? [say.atMost(node.maximum)] : []),
    ];
    const what = say.oneOf(types.map((type) => own(say.types, type) ?? type));
    return bounds.length > 0 && types.length === 1 ? say.within(what, bounds) : what;
  };

  const fieldsOf = (given: Node, givenHome: Node, path: string, depth: number): FieldEntry[] => {
    const { node, home } = target(given, givenHome);
    if (depth > 5) return [];
    const required = new Set(Array.isArray(node.required) ? node.required : []);
    const fields = nodesOf(node.properties).flatMap(([name, field]) =>
      entry(field, home, path === "" ? name : `${path}.${name}`, required.has(name), depth),
    );
    // A mapping of ids to one form; a list of one form; a word that may also be a mapping.
    const each =
      isNode(node.additionalProperties) && "description" in target(node.additionalProperties, home).node
        ? entry(node.additionalProperties, home, `${path}.ID`, false, depth)
        : [];
    const items = isNode(node.items) ? fieldsOf(node.items, home, `${path}[]`, depth + 1) : [];
    const choices = Array.isArray(node.allOf)
      ? node.allOf
          .filter(isNode)
          .map(({ then }) => then)
          .filter(isNode)
          .filter(({ $ref }) => typeof $ref === "string")
          .flatMap((then) => fieldsOf(then, home, path, depth + 1))
      : [];
    return [...fields, ...each, ...items, ...choices];
  };

  const entry = (field: Node, home: Node, path: string, required: boolean, depth: number): FieldEntry[] => {
    const { node } = target(field, home);
    const [example] = Array.isArray(node.examples) ? node.examples : [];
    return [
      {
        path,
        takes: takes(field, home),
        required,
        meaning: String(node.description ?? ""),
        example:
          example === undefined ? null : typeof example === "string" ? example : JSON.stringify(example),
      },
      ...fieldsOf(field, home, path, depth + 1),
    ];
  };

  return order.flatMap((id) => {
    const schema = schemas.get(id);
    return schema
      ? [
          {
            id,
            name: String(schema.title),
            description: String(schema.description),
            fields: fieldsOf(schema, schema, "", 0),
          },
        ]
      : [];
  });
}
