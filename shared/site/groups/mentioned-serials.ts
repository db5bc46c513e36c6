import type { Item } from "../../records/item.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { topLine } from "../../source/top-word.ts";
import { fieldOf, yamlOf } from "./written-record.ts";

/** The serial of an item, told by a text, with what the item itself says of publishing it. Plain data. */
export interface MentionedSerial {
  readonly serial: string;
  readonly publish: Partial<Item["publish"]>;
}

/** What an item says of publishing; read in full only where it may say anything. */
export function publishingOf(item: RecordText): MentionedSerial["publish"] {
  if (topLine(yamlOf(item), "publish") === undefined) return {};
  return (fieldOf(item, "publish") as MentionedSerial["publish"] | null | undefined) ?? {};
}
