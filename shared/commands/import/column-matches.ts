import { distance } from "fastest-levenshtein";
import { plainWords } from "../../diagnostics/plain-words.ts";
import { isRefused } from "../../validation/written/read.ts";
import type { Encoding } from "./decoded-text.ts";
import { type Field, fieldsOf, type TableKind } from "./fields.ts";
import type { Column, DataRow } from "./headings.ts";
import { recordKinds } from "./known-words.ts";
import { readPartWord } from "./part-words.ts";
import { saysNothing } from "./readings.ts";
import type { Separator } from "./sheet.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What was found of a spreadsheet before anybody said how to read it. */
export interface SheetFacts {
  readonly kind: TableKind;
  /** As the user names the spreadsheet and the map, for the commands to type. */
  readonly file: string;
  readonly mapFile: string;
  readonly encoding: Encoding;
  readonly separator: Separator;
  readonly headingRows: readonly number[];
  readonly columns: readonly Column[];
  readonly rows: readonly DataRow[];
  readonly thisYear: number;
  /** The collection's, as BCP 47. */
  readonly language: string;
}

/** Which column each field, part and feature is read from. */
export interface Matches {
  readonly fields: ReadonlyMap<string, Column>;
  readonly parts: ReadonlyMap<string, Column>;
  readonly features: ReadonlyMap<string, Column>;
  readonly unused: readonly Column[];
}

/** True where some words stand in a heading, whole and in this order. */
export const containsWords = (heading: string, words: string) => ` ${heading} `.includes(` ${words} `);

/** How a heading fits a field: faintly where it is near to a brief one. */
type Fit = "own" | "synonym" | "near" | "brief" | "faint";

/** A name among other words, or a slip. */
function isNear(words: string, names: readonly string[]): boolean {
  const long = names.filter((each) => each.length > 3);
  if (long.some((each) => containsWords(words, each))) return true;
  return words.length > 4 && long.some((each) => distance(words, each) <= 1);
}

function fitOf({ name, headings, brief }: Field, heading: string): Fit | undefined {
  const words = plainWords(heading);
  if (words === name) return "own";
  if (headings.includes(words)) return "synonym";
  if (brief.includes(words)) return "brief";
  if (isNear(words, [name, ...headings])) return "near";
  return isNear(words, brief) ? "faint" : undefined;
}

const plainFits: readonly (Fit | undefined)[] = ["own", "synonym", "brief"];

export const isKnownHeading =
  (kind: TableKind, vocabulary: Vocabulary) =>
  (heading: string): boolean =>
    fieldsOf(kind).some((field) => plainFits.includes(fitOf(field, heading))) ||
    partOrFeature(heading, vocabulary) !== undefined;

/** "parts.lens", "Lens", "features.arc": a column of a single part or feature. */
function partOrFeature(heading: string, vocabulary: Vocabulary): ["parts" | "features", string] | undefined {
  const [, prefix, rest] = /^(parts?|features?)[.:\s]+([^.:\s].*)$/i.exec(heading) ?? [];
  const name = rest ?? heading;
  const part = prefix?.toLowerCase().startsWith("f") ? undefined : vocabulary.part(undefined, name);
  if (part !== undefined) return ["parts", part];
  const feature = vocabulary.feature(name);
  return feature === undefined ? undefined : ["features", feature];
}

/** Whether every cell of a column, and there are some, says how an example was seen, whatever stands above. */
function saysHowSeen({ index }: Column, rows: readonly DataRow[]): boolean {
  const cells = rows.map((row) => row.cells[index] ?? "").filter((cell) => !saysNothing(cell));
  return cells.length > 0 && cells.every((cell) => recordKinds.of(cell) !== undefined);
}

/** Whether the cells of a column are 1, 2, 3 and so on: the numbers of a list's own rows. */
export function countsRows({ index }: Column, rows: readonly DataRow[]): boolean {
  return (
    rows.length > 1 && rows.every(({ cells }, at) => cells[index]?.replace(/\.$/, "") === String(at + 1))
  );
}

/**
 * Finds the columns by their headings: own names and synonyms first, single parts next, then what is near, and at last
 * what may be said of anything; of such columns one that counts the rows only where there is no other.
 */
export function columnMatches({ kind, columns, rows }: SheetFacts, vocabulary: Vocabulary): Matches {
  const fields = new Map<string, Column>();
  const parts = new Map<string, Column>();
  const features = new Map<string, Column>();
  const used = new Set<Column>();
  const take = (...fits: readonly Fit[]) => {
    for (const fit of fits) {
      for (const field of fieldsOf(kind)) {
        if (fields.has(field.name)) continue;
        const fitting = columns.filter((each) => !used.has(each) && fitOf(field, each.heading) === fit);
        const column = fitting.find((each) => fit !== "brief" || !countsRows(each, rows)) ?? fitting[0];
        if (!column) continue;
        fields.set(field.name, column);
        used.add(column);
      }
    }
  };
  take("own", "synonym");
  for (const column of columns) {
    const found = used.has(column) ? undefined : partOrFeature(column.heading, vocabulary);
    if (!found) continue;
    const [where, id] = found;
    const cells = rows
      .slice(0, 500)
      .map((row) => row.cells[column.index] ?? "")
      .filter((cell) => !saysNothing(cell));
    // The heading is the part's own name: a cell that says something else is a row to correct, no other column.
    const fits =
      cells.filter((cell) => /^[[{]/.test(cell) || !isRefused(readPartWord(cell))).length >= cells.length / 2;
    if (where === "parts" ? parts.has(id) || !fits : features.has(id) || kind === "sightings") continue;
    (where === "parts" ? parts : features).set(id, column);
    used.add(column);
  }
  take("near", "brief", "faint");
  const kinds = fieldsOf(kind).find((field) => field.reader === "record-kind" && !fields.has(field.name));
  const ofKinds = kinds && columns.find((column) => !used.has(column) && saysHowSeen(column, rows));
  if (kinds && ofKinds) {
    fields.set(kinds.name, ofKinds);
    used.add(ofKinds);
  }
  return { fields, parts, features, unused: columns.filter((column) => !used.has(column)) };
}

/** The headings of an export, and no others: its cells are as the collection's own files have them. */
export function isExport({ kind, columns }: SheetFacts, matches: Matches): boolean {
  const fields = fieldsOf(kind);
  const own = new Set(fields.map(({ name }) => name));
  return (
    fields.every(({ name, required }) => !required || matches.fields.get(name)?.heading === name) &&
    columns.every(({ heading }) => own.has(heading) || /^(?:parts|features)\./.test(heading))
  );
}
