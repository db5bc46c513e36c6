import type { Redact } from "./masking.ts";
import type { Audience } from "./published.ts";

/** Only fields that may be shown pass: those that the entry itself does not keep, with serials taken out. */
export function showing(entry: { readonly private: readonly string[] }, audience: Audience, redact: Redact) {
  const kept = (field: string) => audience === "public" && entry.private.includes(field);
  return {
    text: (field: string, value: string | undefined): string | null =>
      value === undefined || kept(field) ? null : redact(value),
    list: (field: string, values: readonly string[]): readonly string[] =>
      kept(field) ? [] : values.map(redact),
    kept,
  };
}
