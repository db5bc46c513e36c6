import type { Item } from "../records/item.ts";
import { frontMatterOf } from "../source/front-matter.ts";
import type { RecordText } from "../source/read-texts.ts";
import { markdownRecord, yamlRecord } from "../source/record-file.ts";

/** The serial of an item, told by a text, with what the item itself says of publishing it. Plain data. */
export interface ToldSerial {
  readonly serial: string;
  readonly publish: Partial<Item["publish"]>;
}

const documentOf = ({ file, text }: RecordText) =>
  (file.endsWith(".md") ? markdownRecord : yamlRecord)(file, text).document;

/** What an item says of publishing; read in full only where it may say anything. */
export function publishingOf(item: RecordText): ToldSerial["publish"] {
  if (!frontMatterOf(item.text).includes("publish")) return {};
  const data = documentOf(item)?.data as { publish?: ToldSerial["publish"] } | null | undefined;
  return data?.publish ?? {};
}

const stringsIn = (value: unknown): string[] => {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(stringsIn) : [];
};

/** A text as it stands; where letters in it may be written as escapes of YAML or JSON, with what those say. */
export function wordsOf(record: RecordText): string {
  const { file, text } = record;
  const written = file.endsWith(".md") ? frontMatterOf(text) : text;
  return written.includes("\\") ? [text, ...stringsIn(documentOf(record)?.data)].join("\n") : text;
}
