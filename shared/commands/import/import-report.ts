import type { CheckedRow } from "./checked-row.ts";
import type { RowProblem } from "./read-row.ts";

export const counted = (count: number, one: string, many = `${one}s`) =>
  `${count.toLocaleString("en")} ${count === 1 ? one : many}`;

export interface Tally {
  readonly fresh: number;
  readonly known: number;
  readonly rejected: number;
}

export function tallyRows(rows: readonly CheckedRow<unknown>[]): Tally {
  const of = (fate: CheckedRow<unknown>["fate"]) => rows.filter((row) => row.fate === fate).length;
  return { fresh: of("new"), known: of("known"), rejected: of("rejected") };
}

/** "present: Found …": a reason, with the field that it is about; the first of each field says enough. */
export const reasonOf = (problems: readonly RowProblem[]): string =>
  problems
    .filter(({ field }, at) => problems.findIndex((other) => other.field === field) === at)
    .map(({ field, reason }) => (field === "" ? reason : `${field}: ${reason}`))
    .join(" ");

/** The same reasons together, the commonest first, with the rows that they hold for. */
export function reasonLines(rows: readonly CheckedRow<unknown>[], most = 12): string[] {
  const byReason = new Map<string, number[]>();
  for (const each of rows) {
    if (each.fate !== "rejected") continue;
    const reason = reasonOf(each.problems);
    const numbers = byReason.get(reason);
    if (numbers) numbers.push(each.row.number);
    else byReason.set(reason, [each.row.number]);
  }
  const sorted = [...byReason].sort((a, b) => b[1].length - a[1].length);
  const lines = sorted.slice(0, most).map(([reason, numbers]) => {
    const first = numbers.slice(0, 5).join(", ");
    const more = numbers.length > 5 ? ` and ${(numbers.length - 5).toLocaleString("en")} more` : "";
    return `  ${numbers.length === 1 ? "row" : "rows"} ${first}${more}: ${reason}`;
  });
  if (sorted.length > most) lines.push(`  … and ${counted(sorted.length - most, "other reason")}.`);
  return lines;
}

/** Rows that would be brought in, and say word for word what an earlier one says: copies, or two sightings alike. */
export function twinLines(rows: readonly CheckedRow<unknown>[]): string[] {
  const seen = new Set<string>();
  const twins: number[] = [];
  for (const each of rows) {
    if (each.fate !== "new" || !(each.content instanceof Map)) continue;
    const says = JSON.stringify([...each.content].sort());
    if (seen.has(says)) twins.push(each.row.number);
    seen.add(says);
  }
  if (twins.length === 0) return [];
  const more = twins.length > 5 ? ` and ${(twins.length - 5).toLocaleString("en")} more` : "";
  const which = `${twins.length === 1 ? "Row" : "Rows"} ${twins.slice(0, 5).join(", ")}${more}`;
  return twins.length === 1
    ? [
        `${which} says exactly what an earlier row says. It counts as a separate sighting: remove it if it is a copy.`,
      ]
    : [
        `${which} say exactly what an earlier row says. They count as separate sightings: remove any that are copies.`,
      ];
}

/** Rows that would be brought in a second time, where the map says more of them than it did the first time. */
export function alikeLines(rows: readonly CheckedRow<unknown>[]): string[] {
  const alike = rows.flatMap((row) =>
    row.fate === "new" && row.resembles !== undefined ? [row.resembles] : [],
  );
  if (alike.length === 0) return [];
  const files = [...new Set(alike)].join(", ");
  return [
    `${counted(alike.length, "row")} may already be in ${files}, in different words: with the same date and variant, and nothing that speaks against it. Each would count as a separate sighting: remove any that are copies.`,
  ];
}

/** The first rows as they were understood, field by field. */
export function previewLines(rows: readonly CheckedRow<unknown>[], most = 5): string[] {
  return rows.slice(0, most).map(({ row, fate }) => {
    const { fields, parts, features } = row;
    const said = [...fields, ...parts, ...features].map(([name, value]) => {
      const line = value.replace(/\s+/g, " ");
      return `${name} ${line.length > 40 ? `${line.slice(0, 39)}…` : line}`;
    });
    const mark = fate === "rejected" ? " (would be rejected)" : fate === "known" ? " (already there)" : "";
    const more = said.length > 12 ? ` · and ${said.length - 12} more` : "";
    return `  row ${row.number}${mark}: ${said.slice(0, 12).join(" · ") || "nothing"}${more}`;
  });
}
