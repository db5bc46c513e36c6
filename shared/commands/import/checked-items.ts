import type { Collection } from "../../records/collection.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import type { Item } from "../../records/item.ts";
import type { ReadCollection, ReadRecord } from "../../source/read-records.ts";
import { recordValidator } from "../../validation/record-validator.ts";
import { referenceKinds } from "../collection/record-problems.ts";
import { type CheckedRow, rowDocuments } from "./checked-row.ts";
import { itemRecord } from "./item-record.ts";
import { itemText } from "./item-text.ts";
import type { ReadRow, RowProblem } from "./read-row.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface ItemFile {
  readonly id: string;
  readonly file: string;
  readonly text: string;
}

const fileOf = (id: string) => `content/items/${id}/index.md`;

/** All that an item says, however it was typed, so that the same item is known again. */
const contentOf = ({ document: _, description, ...item }: Item): string =>
  JSON.stringify({ ...item, description: description.trim() }, (_, value) => {
    if (value instanceof Map) return [...value].sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));
    return typeof value === "string" ? value.normalize("NFC").replace(/\r\n?/g, "\n").trim() : value;
  });

/** Holds rows against the collection as `check` would, and against the items that it already has. */
export function checkedItems(
  rows: readonly ReadRow[],
  read: ReadCollection,
  known: Collection,
  vocabulary: Vocabulary,
): CheckedRow<ItemFile>[] {
  const { documentOf, errorsByRow } = rowDocuments();
  const there = new Map(read.files.filter(({ kind }) => kind === "item").map(({ id, file }) => [id, file]));
  const made = rows.map((row) => {
    const { id, data, body, problems } = itemRecord(row, vocabulary);
    const file = there.get(id) ?? fileOf(id);
    return {
      row,
      id,
      file,
      problems,
      text: itemText(data, body),
      document: documentOf(file, row.number, data, body),
    };
  });
  type Made = (typeof made)[number];
  const ready = made.filter(({ problems }) => problems.length === 0);
  const fresh = ready.filter(({ id }) => !there.has(id));
  const build = (entries: readonly Made[], kinds: readonly string[]) => {
    const records = entries.map(
      ({ id, file, document }): ReadRecord => ({ kind: "item", id, file, document }),
    );
    const others = read.records.filter(({ kind }) => kinds.includes(kind));
    const all = { ...read, records: [...others, ...records], tables: [], diagnostics: [] };
    return collectionFrom(all, recordValidator());
  };
  const built = build(fresh, [...referenceKinds, "item"]);
  const ours = new Set(fresh.map(({ file }) => file));
  const errors = errorsByRow(built.diagnostics, (file) => ours.has(file));
  // Rows whose ids are taken are read without the items that have them, to be compared with those.
  const firstOf = new Map<string, Made>();
  for (const each of ready) if (!firstOf.has(each.id)) firstOf.set(each.id, each);
  const taken = [...firstOf.values()].filter(({ id }) => there.has(id));
  const again = build(taken, referenceKinds).collection?.items;

  return made.map((each): CheckedRow<ItemFile> => {
    const { row, id, file, text, problems } = each;
    const refuse = (...refused: RowProblem[]): CheckedRow<ItemFile> => ({
      row,
      fate: "rejected",
      problems: refused,
    });
    if (problems.length > 0) return refuse(...problems);
    const first = firstOf.get(id);
    const repeats = first !== undefined && first !== each && first.text === text;
    const [mine, own] = [again?.get(id), known.items.get(id)];
    if (there.has(id)) {
      const same = mine !== undefined && own !== undefined && contentOf(mine) === contentOf(own);
      if (same && (first === each || repeats)) return { row, fate: "known" };
      return refuse({
        field: "id",
        reason: `Found "${id}", which is already the id of ${file}; expected a different id for each item.`,
      });
    }
    // The same row twice in one spreadsheet is one item.
    if (repeats) return { row, fate: "known" };
    const refused = errors.get(row.number) ?? [];
    if (refused.length > 0) return refuse(...refused);
    if (!built.collection?.items.has(id)) {
      const reason =
        "Found a row that depends on a reference with errors; expected a collection that passes check.";
      return refuse({ field: "variant", reason });
    }
    return { row, fate: "new", content: { id, file, text } };
  });
}
