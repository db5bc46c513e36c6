import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { addUnder } from "../../lists/grouping.ts";
import { tellsPrivate } from "../../records/checks/check-private.ts";
import { type PrivateWords, textsByPrivacy } from "../../records/checks/private-words.ts";
import type { Path, SourceDocument } from "../../source/document.ts";
import { recordsIn } from "../../source/read-records.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { mayBeParted, withoutMarkup } from "../../source/without-markup.ts";
import { readableText } from "../groups/written-record.ts";

/** The words of a text that may be of a name, in one form of Unicode; to look for any word takes ten times as long. */
const capitals = (text: string): string[] =>
  (text.normalize("NFC").match(/[\p{Lu}\p{Lo}][\p{L}\p{N}]*/gu) ?? []).map((word) => word.toLowerCase());

/** The records of a file: what it is as a whole, or the rows of a table. */
function documentsOf(text: RecordText): SourceDocument[] {
  const { records, tables } = recordsIn({ texts: [text], files: [text], beside: new Set(), diagnostics: [] });
  return [
    ...records.map(({ document }) => document),
    ...tables.flatMap(({ file, table }) =>
      table.rows.map(({ cells, locate }) => ({
        file,
        data: Object.fromEntries(cells),
        body: "",
        locate: ([column]: Path) => locate(column?.toString()),
      })),
    ),
  ];
}

/**
 * Names that items keep private, given away by any other record; what an item gives away of its own is checked where
 * it is read. A record is taken apart only where it has the first word of such a name, with a capital.
 */
export function findPrivateNames(names: readonly PrivateWords[], texts: readonly RecordText[]): Diagnostic[] {
  const keepers = new Map<string, Set<string>>();
  const byFirst = new Map<string, PrivateWords[]>();
  for (const name of names) {
    const key = name.words.toLowerCase();
    const known = keepers.get(key);
    if (known) known.add(name.item);
    else {
      keepers.set(key, new Set([name.item]));
      addUnder(byFirst, capitals(name.words)[0] ?? "", name);
    }
  }
  if (byFirst.size === 0) return [];
  return texts.flatMap((text) => {
    const isOthers = ({ words }: PrivateWords) =>
      text.kind !== "item" || !keepers.get(words.toLowerCase())?.has(text.id);
    const readable = readableText(text);
    const words = new Set(capitals(mayBeParted(readable) ? withoutMarkup(readable).text : readable));
    const maybe = [...words].flatMap((word) => byFirst.get(word) ?? []).filter(isOthers);
    if (maybe.length === 0) return [];
    return documentsOf(text).flatMap((document) => {
      const { told } = textsByPrivacy(document);
      return maybe.flatMap((name) => tellsPrivate(name, document, told));
    });
  });
}
