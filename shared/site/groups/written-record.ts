import type { SourceDocument } from "../../source/document.ts";
import { frontMatterOf } from "../../source/front-matter.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { markdownRecord, yamlRecord } from "../../source/record-file.ts";
import { topLine, topWord } from "../../source/top-word.ts";
import { type Status, statuses } from "../../terms/states.ts";

/** The YAML of a record, as it is written. */
export const yamlOf = ({ file, text }: RecordText): string =>
  file.endsWith(".md") ? frontMatterOf(text) : text;

/** A record read in full; null where it cannot be. */
export const documentOf = ({ file, text }: RecordText): SourceDocument | null =>
  (file.endsWith(".md") ? markdownRecord : yamlRecord)(file, text).document;

/** Every text in a value. */
export const stringsIn = (value: unknown): string[] => {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(stringsIn) : [];
};

/** A field of a record that is read in full for it. */
export const fieldOf = (record: RecordText, field: string): unknown =>
  (documentOf(record)?.data as Readonly<Record<string, unknown>> | null | undefined)?.[field];

/** A text as it stands; where letters in it may be written as escapes of YAML or JSON, with what those say. */
export function readableText(record: RecordText): string {
  const { text } = record;
  return yamlOf(record).includes("\\") ? [text, ...stringsIn(documentOf(record)?.data)].join("\n") : text;
}

/** The family in whose folder a reference lies. */
export const familyIn = (file: string): string => file.split("/")[2] ?? "";

/** Whatever a text may take from the data begins like this (shared/prose/mentions.ts). */
const mayMention = /<[a-zA-Z][a-zA-Z0-9+.-]*:|(?:```|~~~)\s*expect/;

/** The ids that a text may speak of; null where it may speak of everything. */
export function mentioned(record: RecordText): string[] | null {
  const text = readableText(record);
  if (!mayMention.test(text)) return [];
  if (/:items[?>]/.test(text)) return null;
  return [...text.matchAll(/\b(?:items|variants)\/([^\s/>?&]+)/g)].flatMap(([, id]) => id ?? []);
}

/** A word that a record has at its top; read in full only where that cannot be seen at once. */
function wordAt(record: RecordText, key: string): string | undefined {
  const seen = topWord(yamlOf(record), key);
  if (seen !== null) return seen;
  const word = fieldOf(record, key);
  return typeof word === "string" ? word : undefined;
}

/** The variant that an item is held to be. */
export const variantOf = (item: RecordText): string | undefined => wordAt(item, "variant");

/** What has become of an item; of a word that is none somebody is told elsewhere. */
export function statusOf(item: RecordText): Status {
  const word = wordAt(item, "status");
  return statuses.find((status) => status === word) ?? "collection";
}

/** The variant that a variant extends. */
export const baseOf = (variant: RecordText): string | undefined => wordAt(variant, "extends");

/** Letters and digits on the key's own line, in whatever quotation marks; a decimal is read as a number first. */
const plainSerial = /^[ \t]+(?!\d+\.\d+[ \t]*$)(["']?)([\p{L}\p{N}][\p{L}\p{N} ./-]*)\1[ \t]*$/u;

/** The serial of an item; read in full only where it cannot be seen at once. */
export function serialOf(item: RecordText): string | undefined {
  const line = topLine(yamlOf(item), "serial");
  if (line === undefined) return undefined;
  // A page of blanks would be looked through from each of them.
  const plain = line !== null && line.length <= 200 ? plainSerial.exec(line)?.[2] : undefined;
  if (plain !== undefined) return plain.trim();
  const serial = fieldOf(item, "serial");
  return typeof serial === "string" || typeof serial === "number" ? String(serial) : undefined;
}

/** The ids that a record had before; read in full only where there may be some. */
export function formerIds(record: RecordText): string[] {
  if (topLine(yamlOf(record), "formerly") === undefined) return [];
  const former = fieldOf(record, "formerly");
  return Array.isArray(former) ? former.filter((id) => typeof id === "string") : [];
}
