import { distance } from "fastest-levenshtein";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import { yamlLine } from "../yaml-line.ts";
import type { Encoding } from "./decoded-text.ts";
import { type Field, fieldsOf, type TableKind } from "./fields.ts";
import type { Column, DataRow } from "./headings.ts";
import { separatorNames } from "./mapping.ts";
import { readPartWord } from "./part-words.ts";
import { plainWords } from "./plain-words.ts";
import { dateEvidence } from "./read-date.ts";
import { provenDecimal } from "./read-number.ts";
import { isRefused, saysNothing } from "./readings.ts";
import type { Separator } from "./sheet.ts";
import type { Vocabulary } from "./vocabulary.ts";

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
}

export interface Names {
  readonly variants: readonly { readonly id: string; readonly name: string }[];
  readonly sources: readonly { readonly id: string; readonly name: string }[];
  readonly vocabulary: Vocabulary;
}

interface Matches {
  readonly fields: ReadonlyMap<string, Column>;
  readonly parts: ReadonlyMap<string, Column>;
  readonly features: ReadonlyMap<string, Column>;
  readonly unused: readonly Column[];
}

const containsWords = (heading: string, words: string) => ` ${heading} `.includes(` ${words} `);

/** How well a heading fits a field: 3 its own name, 2 a synonym, 1 a synonym among other words, or a slip. */
function fitOf(field: Field, heading: string): number {
  const words = plainWords(heading);
  const own = field.name;
  if (words === own) return 3;
  if (field.headings.includes(words)) return 2;
  const long = [own, ...field.headings].filter((each) => each.length > 3);
  if (long.some((each) => containsWords(words, each))) return 1;
  return words.length > 4 && long.some((each) => distance(words, each) <= 1) ? 1 : 0;
}

export const isKnownHeading =
  (kind: TableKind, vocabulary: Vocabulary) =>
  (heading: string): boolean =>
    fieldsOf(kind).some((field) => fitOf(field, heading) >= 2) ||
    partOrFeature(heading, vocabulary) !== undefined;

/** "parts.lens", "Lens", "features.arc": a column of a single part or feature. */
function partOrFeature(heading: string, vocabulary: Vocabulary): ["parts" | "features", string] | undefined {
  const [, prefix, rest] = /^(parts?|features?)[.:\s]+(.+)$/i.exec(heading) ?? [];
  const name = rest ?? heading;
  const part = prefix?.toLowerCase().startsWith("f") ? undefined : vocabulary.part(undefined, name);
  if (part !== undefined) return ["parts", part];
  const feature = vocabulary.feature(name);
  return feature === undefined ? undefined : ["features", feature];
}

function match({ kind, columns, rows }: SheetFacts, vocabulary: Vocabulary): Matches {
  const fields = new Map<string, Column>();
  const parts = new Map<string, Column>();
  const features = new Map<string, Column>();
  const used = new Set<Column>();
  const take = (least: number) => {
    for (let level = 3; level >= least; level--) {
      for (const field of fieldsOf(kind)) {
        if (fields.has(field.name)) continue;
        const column = columns.find((each) => !used.has(each) && fitOf(field, each.heading) === level);
        if (!column) continue;
        fields.set(field.name, column);
        used.add(column);
      }
    }
  };
  take(2);
  for (const column of columns) {
    const found = used.has(column) ? undefined : partOrFeature(column.heading, vocabulary);
    if (!found) continue;
    const [where, id] = found;
    const cells = rows
      .slice(0, 500)
      .map((row) => row.cells[column.index] ?? "")
      .filter((cell) => !saysNothing(cell));
    const fits =
      cells.filter((cell) => /^[[{]/.test(cell) || !isRefused(readPartWord(cell))).length >=
      cells.length * 0.8;
    if (where === "parts" ? parts.has(id) || !fits : features.has(id) || kind === "sightings") continue;
    (where === "parts" ? parts : features).set(id, column);
    used.add(column);
  }
  take(1);
  return { fields, parts, features, unused: columns.filter((column) => !used.has(column)) };
}

/** The words of a column, each once, the commonest first. */
function distinct(rows: readonly DataRow[], column: Column, most = 40): string[] {
  const counts = new Map<string, number>();
  for (const { cells } of rows) {
    const cell = cells[column.index] ?? "";
    if (cell !== "" && !saysNothing(cell)) counts.set(cell, (counts.get(cell) ?? 0) + 1);
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, most)
    .map(([cell]) => cell);
}

const comment = (text: string, indent = "") => `${indent}## ${text}`;

/** Words that the collection does not know, each with the nearest that it does, to be brought in by hand. */
function translation(
  unknown: readonly string[],
  known: readonly { readonly id: string; readonly name: string }[],
): string[] {
  const byName = new Map(known.flatMap(({ id, name }) => [[id, id] as const, [name, id] as const]));
  return unknown.map((word) => {
    const words = plainWords(word);
    const within = known.filter(({ name }) => words.length > 2 && containsWords(plainWords(name), words));
    const nearest = within.length === 1 ? within[0]?.name : nearestName(word, byName.keys());
    return `      # ${yamlLine(word)}: ${nearest === undefined ? "…" : byName.get(nearest)}`;
  });
}

/** A map of the columns, as well as it can be told from the headings and the cells, for somebody to correct. */
export function proposedMapping(facts: SheetFacts, names: Names): string {
  const { kind, columns, rows } = facts;
  const { vocabulary } = names;
  const matches = match(facts, vocabulary);
  const column = (heading: string) => yamlLine(heading);
  const separator =
    Object.keys(separatorNames).find((name) => separatorNames[name] === facts.separator) ?? "comma";
  const cellsOf = (field: string) => {
    const found = matches.fields.get(field);
    return found ? rows.map((row) => row.cells[found.index] ?? "") : [];
  };

  const dates = dateLines(facts, matches, [
    ...cellsOf("seen"),
    ...cellsOf("examined"),
    ...cellsOf("updated"),
  ]);
  const amounts = isExport(facts, matches) ? [] : [...cellsOf("price"), ...cellsOf("paid")];
  const decimal = amounts.some((cell) => /[.,]/.test(cell)) ? provenDecimal(new Set(amounts)) : undefined;

  const lines = [
    comment(`How the columns of ${facts.file} are read. Correct this file, then bring the rows in with`),
    comment(`  fittedcase import ${kind} ${facts.file} --map ${facts.mapFile}`),
    `import: ${kind}`,
    `sheet: { encoding: ${facts.encoding}, separator: ${separator}, headings: ${JSON.stringify(facts.headingRows)} }`,
    ...dates,
    ...(decimal
      ? [comment("The sign before the decimals, as your numbers show."), `decimal: ${yamlLine(decimal)}`]
      : []),
    "",
    comment(
      "Each field, and the heading of the column that it is read from. [One, Other] joins two columns;",
    ),
    comment(
      '{ always: … } is the same for every row; values: { "Mark Two": mark-2 } translates words of yours.',
    ),
    "columns:",
  ];
  for (const field of fieldsOf(kind)) {
    const found = matches.fields.get(field.name);
    if (found) lines.push(...fieldLines(field, found));
    else lines.push(...missingField(field));
  }
  for (const [name, group] of [
    ["parts", matches.parts],
    ["features", matches.features],
  ] as const) {
    if (group.size === 0) continue;
    lines.push(
      "",
      comment(
        name === "parts"
          ? "Columns of single parts: yes, no, a state, or how many."
          : "Columns of single features.",
      ),
    );
    lines.push(`${name}:`, ...[...group].map(([id, { heading }]) => `  ${yamlLine(id)}: ${column(heading)}`));
  }
  const unread = matches.unused.map(({ heading }) => heading);
  if (unread.length > 0) lines.push("", comment(`Columns that nothing reads: ${unread.join("; ")}`));
  if (columns.length === 0) lines.push(comment("No column was found."));
  return `${lines.join("\n")}\n`;

  function fieldLines(field: Field, found: Column): string[] {
    const plain = [`  ${field.name}: ${column(found.heading)}`];
    const known =
      field.reader === "variant" ? names.variants : field.reader === "source" ? names.sources : undefined;
    if (!known) return plain;
    const resolve = field.reader === "variant" ? vocabulary.variant : vocabulary.source;
    const unknown = distinct(rows, found).filter((word) => resolve(word) === undefined);
    if (unknown.length === 0) return plain;
    return [
      `  ${field.name}:`,
      `    column: ${column(found.heading)}`,
      "    values:",
      comment("Not known to the collection. Say what each stands for, and take the # away.", "      "),
      ...translation(unknown, known),
    ];
  }

  function missingField(field: Field): string[] {
    const [variant] = names.variants;
    if (field.name === "variant" && variant && names.variants.length === 1) {
      return [comment("The only variant that there is.", "  "), `  variant: { always: ${variant.id} }`];
    }
    if (field.reader === "record-kind") {
      const guess = matches.fields.has("price") ? "offer" : "record";
      return [
        comment(
          "No column says how each was seen: offer (for sale), record (described) or mention (named).",
          "  ",
        ),
        `  kind: { always: ${guess} }`,
      ];
    }
    if (field.required)
      return [
        comment(`NOT FOUND, and needed: ${field.name}. Which column is it?`, "  "),
        `  # ${field.name}: …`,
      ];
    if (field.name === "source")
      return [
        comment("Where the rows are recorded: an id of content/sources.yaml.", "  "),
        "  # source: { always: … }",
      ];
    return [];
  }
}

/** The headings of an export, and no others: its cells are as the collection's own files have them. */
function isExport({ kind, columns }: SheetFacts, matches: Matches): boolean {
  const fields = fieldsOf(kind);
  const own = new Set(fields.map(({ name }) => name));
  return (
    fields.every(({ name, required }) => !required || matches.fields.get(name)?.heading === name) &&
    columns.every(({ heading }) => own.has(heading) || /^(?:parts|features)\./.test(heading))
  );
}

function dateLines(facts: SheetFacts, matches: Matches, cells: readonly string[]): string[] {
  const { thisYear } = facts;
  if (isExport(facts, matches)) {
    const says = "The dates are EDTF already, and the numbers plain, as in the collection's own files.";
    return [comment(says), "dates: edtf", 'decimal: "."'];
  }
  const { order, by, twoDigitYears } = dateEvidence(new Set(cells));
  const from = thisYear - 99;
  return [
    ...(order
      ? [
          comment(`${by} in your file shows the order: ${order === "day-month" ? "day" : "month"} first.`),
          `dates: ${order}`,
        ]
      : [
          comment("Which comes first in 3/12/1998: day-month or month-day? Nothing in your file proves it."),
          "# dates: day-month",
        ]),
    ...(twoDigitYears
      ? [comment(`Years of two digits are taken as ${from} to ${thisYear}.`), `two-digit-years-from: ${from}`]
      : []),
  ];
}
