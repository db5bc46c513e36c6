import { visible } from "../diagnostics/visible-text.ts";

/** A value found in a record, short enough for a sentence. */
export function inWords(value: unknown): string {
  if (value === null || value === undefined) return "nothing";
  if (typeof value === "string") {
    const shown = value.length > 60 ? `${value.slice(0, 59)}…` : value;
    return `"${visible(shown)}"`;
  }
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  if (typeof value === "object")
    return Object.keys(value).length === 0 ? "an empty mapping" : "a mapping of fields";
  return String(value);
}
