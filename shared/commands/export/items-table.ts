import type { Collection } from "../../records/collection.ts";
import type { Item } from "../../records/item.ts";
import { fieldsOf, type Reader } from "../import/fields.ts";
import { yamlLine } from "../writing/yaml-line.ts";

type Raw = Readonly<Record<string, unknown>>;

/** As the author wrote it: a word or a number as it stands, a list of names between semicolons, else YAML on one line. */
function cellOf(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value !== "object") return String(value);
  return yamlLine(value);
}

const namesOf = (value: unknown): string => (Array.isArray(value) ? value.join(";") : cellOf(value));

/** A single line stands as it is; several, and what would be read as a list, are one. */
const linesOf = (value: unknown): string =>
  typeof value === "string" && /\n|^[[{]/.test(value) ? cellOf([value]) : cellOf(value);

const mapOf = (value: unknown): Raw => (typeof value === "object" && value !== null ? (value as Raw) : {});

/** One row an item, with a column for each feature and part that any variant has. */
export function itemsTable({ items, variants, families }: Collection): string[][] {
  const features = new Set([...families.values()].flatMap((family) => [...family.features.keys()]));
  const parts = new Set([...variants.values()].flatMap((variant) => [...variant.parts.keys()]));
  const fields = fieldsOf("items").filter(({ name }) => name !== "currency");
  const row = (item: Item): string[] => {
    const raw = mapOf(item.document.data);
    const field = (name: string, reader: Reader): string => {
      if (name === "id") return item.id;
      if (name === "description") return item.description.trim();
      if (reader === "lines") return linesOf(raw[name]);
      return reader === "names" ? namesOf(raw[name]) : cellOf(raw[name]);
    };
    const [seen, found] = [mapOf(raw.features), mapOf(raw.parts)];
    return [
      ...fields.map(({ name, reader }) => field(name, reader)),
      ...[...features].map((id) => (Object.hasOwn(seen, id) ? cellOf(seen[id]) : "")),
      ...[...parts].map((id) => (Object.hasOwn(found, id) ? cellOf(found[id]) : "")),
    ];
  };
  return [
    [
      ...fields.map(({ name }) => name),
      ...[...features].map((id) => `features.${id}`),
      ...[...parts].map((id) => `parts.${id}`),
    ],
    ...[...items.values()].map(row),
  ];
}
