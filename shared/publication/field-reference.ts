import type { JsonSchema } from "../source/record-schemas.ts";

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

/** What the forms that records share are called. */
const forms: Readonly<Record<string, string>> = {
  id: "an id",
  line: "one line of text",
  text: "text",
  name: "a name or number",
  date: "a date (EDTF)",
  names: "a name or number, or a list of them",
  privateFields: "a list of field names",
};

const simple: Readonly<Record<string, string>> = {
  string: "text",
  integer: "a whole number",
  number: "a number",
  boolean: "true or false",
  object: "fields of its own",
  array: "a list",
  null: "nothing",
};

const joined = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;

/**
 * Every field of every kind of record, read out of the schemas that validate them: what the documentation says is what
 * is checked.
 */
export function fieldReference(schemas: ReadonlyMap<string, JsonSchema>): RecordReference[] {
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
    if (form !== null && Object.hasOwn(forms, form)) return forms[form] ?? "";
    if (Array.isArray(node.enum)) return joined(node.enum.map(String));
    if (node.const !== undefined) return String(node.const);
    if (node.type === undefined) return "anything";
    const types = [node.type].flat().filter((type) => typeof type === "string" && type !== "null");
    if (types.length === 1 && types[0] === "array" && isNode(node.items)) {
      const inner = target(node.items, home);
      if (inner.form !== null && Object.hasOwn(forms, inner.form)) return `a list, each ${forms[inner.form]}`;
    }
    const bounds = [
      typeof node.minimum === "number" && `at least ${node.minimum}`,
      typeof node.maximum === "number" && node.maximum < beyondSense && `at most ${node.maximum}`,
    ].filter(Boolean);
    const words = joined(types.map((type) => simple[type as string] ?? String(type)));
    return bounds.length > 0 && types.length === 1 ? `${words}, ${bounds.join(" and ")}` : words;
  };

  const fieldsOf = (given: Node, givenHome: Node, path: string, depth: number): FieldEntry[] => {
    const { node, home } = target(given, givenHome);
    if (depth > 5) return [];
    const required = new Set(Array.isArray(node.required) ? node.required : []);
    const own = nodesOf(node.properties).flatMap(([name, field]) =>
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
    return [...own, ...each, ...items, ...choices];
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
