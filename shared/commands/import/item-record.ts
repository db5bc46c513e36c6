import { idFrom } from "../../diagnostics/plain-words.ts";
import { readYaml } from "../../source/yaml.ts";
import { isRefused } from "../../validation/written/read.ts";
import { currencyCode } from "../../validation/written/read-number.ts";
import { readPartWord } from "./part-words.ts";
import type { ReadRow, RowProblem } from "./read-row.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface ItemRecord {
  readonly id: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly body: string;
  readonly problems: readonly RowProblem[];
}

/** The fields of an item in the order in which its file has them. */
const order = [
  "title",
  "variant",
  "serial",
  "set",
  "example",
  "examined",
  "updated",
  "revisions",
  "status",
  "census",
  "publish",
  "features",
  "parts",
  "extras",
  "labels",
  "assembled",
  "provenance",
  "photos",
  "video",
  "materials",
  "measurements",
  "price",
  "distinguishing",
  "storage",
  "paid",
  "private",
  "formerly",
];

const plainText = new Set([
  "title",
  "variant",
  "serial",
  "set",
  "example",
  "examined",
  "updated",
  "status",
  "materials",
  "storage",
]);

/** A row as the front matter of an item, its id and its description. */
export function itemRecord(row: ReadRow, vocabulary: Vocabulary): ItemRecord {
  const problems = [...row.problems];
  const data: Record<string, unknown> = {};
  const variant = row.fields.get("variant");

  const structure = (field: string, cell: string): unknown => {
    const source = { file: field, text: cell, start: 0, end: cell.length };
    const { data: value, diagnostics } = readYaml(source);
    const [problem] = diagnostics;
    if (problem) problems.push({ field, reason: problem.message });
    return value;
  };
  const isStructure = (cell: string) => /^[[{]/.test(cell);
  const names = (cell: string) =>
    cell
      .split(/[;\n]/)
      .map((name) => name.trim())
      .filter((name) => name !== "");

  for (const [field, cell] of row.fields) {
    if (plainText.has(field)) data[field] = cell;
    else if (field === "census") data[field] = cell === "true";
    else if (field === "assembled" || field === "formerly") data[field] = names(cell);
    else if (field === "price" || field === "paid") {
      const currency = row.fields.get("currency") ?? row.fields.get(`${field} currency`);
      data[field] = isStructure(cell)
        ? structure(field, cell)
        : { amount: Number(cell), ...(currency === undefined ? {} : { currency: currencyCode(currency) }) };
    } else if (isStructure(cell) && order.includes(field)) data[field] = structure(field, cell);
    else if (field === "measurements" || field === "distinguishing") data[field] = cell.split("\n");
    else if (field === "extras") data[field] = names(cell).map((name) => ({ name }));
    else if (field === "labels") data[field] = [{ kind: "label", text: cell.split("\n") }];
    else if (order.includes(field)) {
      problems.push({
        field,
        reason: `Found "${cell}"; expected a list or a mapping in YAML, as export writes it.`,
      });
    }
  }

  const features = [...row.features].map(([id, cell]) => [id, vocabulary.featureValue(variant, id, cell)]);
  if (features.length > 0) data.features = Object.fromEntries(features);

  const parts: [string, unknown][] = [];
  for (const [id, cell] of row.parts) {
    if (isStructure(cell)) {
      parts.push([id, structure(id, cell)]);
      continue;
    }
    const word = readPartWord(cell);
    if (isRefused(word)) {
      problems.push({ field: id, reason: word.reason });
      continue;
    }
    const quantity = vocabulary.quantityOf(variant, id);
    if ("count" in word.value) {
      const { count } = word.value;
      parts.push([id, count === (quantity ?? 1) ? "present" : { state: "present", quantity: count }]);
    } else if (word.value.state !== "absent" || quantity !== undefined) parts.push([id, word.value.state]);
  }
  if (parts.length > 0) data.parts = Object.fromEntries(parts);

  return {
    id: idFrom(row.fields.get("id") ?? row.fields.get("title") ?? ""),
    data: Object.fromEntries(
      order.flatMap((field) => (data[field] === undefined ? [] : [[field, data[field]]])),
    ),
    body: row.fields.get("description") ?? "",
    problems,
  };
}
