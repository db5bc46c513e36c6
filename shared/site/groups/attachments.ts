import path from "node:path";
import { grouping } from "../../lists/grouping.ts";
import type { CollectionTexts, RecordText } from "../../source/read-texts.ts";
import { topLine } from "../../source/top-word.ts";
import { documentOf, stringsIn, yamlOf } from "./written-record.ts";

const items = "content/items/";
const ofFolder = /^content\/items\/[^/]+\//;

/** Which of the photographs and recordings of a collection an item may show. */
export interface Attachments {
  readonly of: (item: RecordText) => readonly string[];
}

/**
 * Everything in an item's own folder, and in folders inside it, belongs to the item. An item that is a file of its
 * own shares its folder with all others: of that folder, only what the item names belongs to it, however deep it
 * lies.
 */
export function attachmentsOf({ beside }: CollectionTexts): Attachments {
  const byFolder = grouping(beside, (file) => ofFolder.exec(file)?.[0] ?? items);
  let byName: ReadonlyMap<string, string> | undefined;
  return {
    of(item) {
      const own = ofFolder.exec(item.file)?.[0];
      if (own !== undefined) return byFolder.get(own) ?? [];
      // A name may be written with letters and accents as one, or apart.
      byName ??= new Map([...beside].map((file) => [file.normalize("NFC"), file]));
      return namesIn(item).flatMap(
        (name) => byName?.get(path.posix.join(items, name).normalize("NFC")) ?? [],
      );
    },
  };
}

const fields = ["photos", "video"];

/** Every text in the fields that name files; read only where an item has one of them. */
function namesIn(item: RecordText): string[] {
  if (fields.every((field) => topLine(yamlOf(item), field) === undefined)) return [];
  const data = documentOf(item)?.data as Readonly<Record<string, unknown>> | null | undefined;
  return fields.flatMap((field) => stringsIn(data?.[field]));
}
