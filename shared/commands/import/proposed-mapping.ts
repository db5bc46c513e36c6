import { nearestName } from "../../diagnostics/nearest-name.ts";
import { plainWords } from "../../diagnostics/plain-words.ts";
import { yamlLine } from "../writing/yaml-line.ts";
import { columnMatches, containsWords, countsRows, isExport, type SheetFacts } from "./column-matches.ts";
import { type Field, fieldsOf } from "./fields.ts";
import type { Column, DataRow } from "./headings.ts";
import { knownWordsOf } from "./known-words.ts";
import { habitsOf } from "./language-habits.ts";
import { separatorNames } from "./mapping.ts";
import { amountFields, areOurAmounts, areOurDates, dateFields } from "./own-writing.ts";
import { comment, dateLines, decimalLines } from "./proposed-rules.ts";
import { saysNothing } from "./readings.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface Names {
  readonly variants: readonly { readonly id: string; readonly name: string }[];
  readonly sources: readonly { readonly id: string; readonly name: string }[];
  readonly vocabulary: Vocabulary;
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
  const matches = columnMatches(facts, vocabulary);
  const column = (heading: string) => yamlLine(heading);
  const separator =
    Object.keys(separatorNames).find((name) => separatorNames[name] === facts.separator) ?? "comma";
  const cellsOf = (field: string) => {
    const found = matches.fields.get(field);
    return found ? rows.map((row) => row.cells[found.index] ?? "") : [];
  };

  const habits = habitsOf(facts.language);
  const dates = dateFields.flatMap(cellsOf);
  const amounts = amountFields.flatMap(cellsOf);
  const own = isExport(facts, matches);
  const rules = [
    ...(own && areOurDates(dates)
      ? [comment("The dates are EDTF already, as in the collection's own files."), "dates: edtf"]
      : dateLines(dates, habits, facts.thisYear)),
    ...(own && areOurAmounts(amounts)
      ? [comment("The numbers are plain, as in the collection's own files."), 'decimal: "."']
      : decimalLines(amounts, habits)),
  ];

  const lines = [
    comment(`How the columns of ${facts.file} are read. Correct this file, then bring the rows in with`),
    comment(`  fittedcase import ${kind} ${facts.file} --map ${facts.mapFile}`),
    `import: ${kind}`,
    `sheet: { encoding: ${facts.encoding}, separator: ${separator}, headings: ${JSON.stringify(facts.headingRows)} }`,
    ...rules,
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
    if (found && field.name === "serial" && countsRows(found, rows))
      lines.push(
        comment("This counts the rows, 1, 2, 3. If it is the list's own number, remove the line.", "  "),
      );
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
          ? "Columns for single parts: yes, no, a state or a number."
          : "Columns for single features.",
      ),
    );
    lines.push(`${name}:`, ...[...group].map(([id, { heading }]) => `  ${yamlLine(id)}: ${column(heading)}`));
  }
  const unread = matches.unused.map(({ heading }) => heading);
  if (unread.length > 0) lines.push("", comment(`Columns that are not used: ${unread.join("; ")}`));
  const without = fieldsOf(kind).filter(
    ({ name, reader }) => !matches.fields.has(name) && reader !== "record-kind" && reader !== "structure",
  );
  if (without.length > 0)
    lines.push(
      comment(`Fields for which no column was found: ${without.map(({ name }) => name).join(", ")}`),
    );
  if (columns.length === 0) lines.push(comment("No column was found."));
  return `${lines.join("\n")}\n`;

  function fieldLines(field: Field, found: Column): string[] {
    const plain = [`  ${field.name}: ${column(found.heading)}`];
    const few = knownWordsOf[field.reader];
    const known =
      field.reader === "variant"
        ? names.variants
        : field.reader === "source"
          ? names.sources
          : few?.all.map((word) => ({ id: word, name: word }));
    if (!known) return plain;
    const resolve = few ? few.of : field.reader === "variant" ? vocabulary.variant : vocabulary.source;
    const unknown = distinct(rows, found).filter((word) => resolve(word) === undefined);
    if (unknown.length === 0) return plain;
    return [
      `  ${field.name}:`,
      `    column: ${column(found.heading)}`,
      "    values:",
      comment(
        few
          ? `Not understood. Say for each which it is, ${few.all.join(", ")}, and remove the #.`
          : "Not known to the collection. Say what each stands for, and remove the #.",
        "      ",
      ),
      ...translation(unknown, known),
    ];
  }

  function missingField(field: Field): string[] {
    const [variant] = names.variants;
    if (field.name === "variant" && variant && names.variants.length === 1) {
      return [comment("The only variant there is.", "  "), `  variant: { always: ${variant.id} }`];
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
        comment("Where the rows are recorded: the id of a source in content/sources.yaml.", "  "),
        "  # source: { always: … }",
      ];
    return [];
  }
}
