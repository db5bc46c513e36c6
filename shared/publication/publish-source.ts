import type { Source } from "../records/source.ts";
import { nameInFull } from "../terms/person-name.ts";
import type { Redact } from "./masking.ts";
import type { PublishedSource } from "./published.ts";

/** Whatever stands in it as text, however deep. */
export function freeOf<Value>(value: Value, redact: Redact): Value {
  if (typeof value === "string") return redact(value) as Value;
  if (Array.isArray(value)) return value.map((each) => freeOf(each, redact)) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, freeOf(each, redact)])) as Value;
}

/** Its id, by which everything refers to it, stays; and so does an address, which would lead nowhere. */
export const publishSource = (source: Source, redact: Redact): PublishedSource => ({
  id: source.id,
  title: redact(source.title),
  type: source.type ?? null,
  authors: source.author.map((name) => redact(nameInFull(name))),
  editors: source.editor.map((name) => redact(nameInFull(name))),
  issued: source.issued ?? null,
  accessed: source.accessed === undefined ? null : redact(source.accessed),
  fields: Object.fromEntries(
    Object.entries(source.fields).map(([key, value]) => [
      key,
      key === "id" || key === "URL" || key === "DOI" ? value : freeOf(value, redact),
    ]),
  ),
});
