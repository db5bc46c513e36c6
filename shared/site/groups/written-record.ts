import type { SourceDocument } from "../../source/document.ts";
import { frontMatterOf } from "../../source/front-matter.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { markdownRecord, yamlRecord } from "../../source/record-file.ts";

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
