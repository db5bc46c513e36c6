import { reportAsText } from "../../diagnostics/report.ts";
import type { KnownCollection } from "../collection/known-collection.ts";
import { UsageError } from "../command.ts";
import { today } from "../today.ts";
import { checkedItems, type ItemFile } from "./checked-items.ts";
import type { CheckedRow } from "./checked-row.ts";
import { checkedSightings } from "./checked-sightings.ts";
import { columnMatches, isExport, isKnownHeading, type SheetFacts } from "./column-matches.ts";
import { decodedText, detectEncoding, type Encoding } from "./decoded-text.ts";
import type { TableKind } from "./fields.ts";
import { columnsOf, dataRows, findHeadingRows } from "./headings.ts";
import { counted } from "./import-report.ts";
import { headingsRead, type Mapping, readMapping, strangeHeading } from "./mapping.ts";
import { amountFields, dateFields, dateOfTheirs, needsNoWord } from "./own-writing.ts";
import { proposedMapping } from "./proposed-mapping.ts";
import { rowReader } from "./read-row.ts";
import { readSheet, type Separator, type Sheet } from "./sheet.ts";
import { vocabularyOf } from "./vocabulary.ts";

/** What an import is given. */
export interface Job {
  readonly kind: TableKind;
  /** The spreadsheet and its map, as the user named them. */
  readonly file: string;
  readonly mapFile: string;
  readonly mapPath: string;
  readonly root: string;
  readonly bytes: Uint8Array;
  readonly known: KnownCollection;
  readonly dryRun: boolean;
}

/** A spreadsheet read by its map, every row held against the collection. */
export interface CheckedSheet {
  readonly kind: TableKind;
  readonly sheet: Sheet;
  readonly encoding: Encoding;
  readonly headingRows: readonly number[];
  /** What was found of the file itself, in sentences. */
  readonly about: readonly string[];
  readonly rows: readonly CheckedRow<ReadonlyMap<string, string> | ItemFile>[];
}

/** A mark at the beginning of a file is certain; a map is only believed about files without one. */
function encodingOf(bytes: Uint8Array, mapping: Mapping | undefined): Encoding {
  const [a, b, c] = bytes;
  const marked =
    (a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff) || (a === 0xef && b === 0xbb && c === 0xbf);
  return (marked ? undefined : mapping?.encoding) ?? detectEncoding(bytes);
}

/** A map as it was proposed. */
export interface ProposedMap {
  readonly text: string;
  /** True where every heading is a field's own name and every cell has one reading, so that nothing had to be guessed. */
  readonly certain: boolean;
  /** A date that is not EDTF. */
  readonly dateOfTheirs: string | undefined;
}

export function proposeMap({ kind, file, mapFile, bytes, known }: Job): ProposedMap {
  const encoding = detectEncoding(bytes);
  const sheet = readSheet(decodedText(bytes, encoding));
  const vocabulary = vocabularyOf(known.collection);
  const headingRows = findHeadingRows(sheet.rows, isKnownHeading(kind, vocabulary));
  const columns = columnsOf(sheet.rows, headingRows);
  const { rows } = dataRows(sheet.rows, headingRows);
  const typed = (name: string) => (/^[\w./-]+$/.test(name) ? name : `"${name}"`);
  const facts: SheetFacts = {
    kind,
    file: typed(file),
    mapFile: typed(mapFile),
    encoding,
    separator: sheet.separator,
    headingRows,
    columns,
    rows,
    thisYear: today().year,
    language: known.collection.settings.language,
  };
  const text = proposedMapping(facts, {
    variants: [...known.collection.variants.values()],
    sources: [...known.collection.sources.values()].map(({ id, title }) => ({ id, name: title })),
    vocabulary,
  });
  const matches = columnMatches(facts, vocabulary);
  const cellsOf = (field: string) => {
    const found = matches.fields.get(field);
    return found ? rows.map((row) => row.cells[found.index] ?? "") : [];
  };
  const dates = dateFields.flatMap(cellsOf);
  const result = readMapping(mapFile, text, kind);
  const certain =
    isExport(facts, matches) &&
    matches.unused.length === 0 &&
    "mapping" in result &&
    needsNoWord(dates, amountFields.flatMap(cellsOf), result.mapping);
  return { text, certain, dateOfTheirs: dateOfTheirs(dates) };
}

const separatorWords: Readonly<Record<Separator, string>> = {
  ",": "commas",
  ";": "semicolons",
  "\t": "tabs",
};

/** Reads the spreadsheet as the map says, and holds every row against the collection. Throws where the map is wrong. */
export function checkedSheet({ kind, file, mapFile, bytes, known }: Job, mapText: string): CheckedSheet {
  const result = readMapping(mapFile, mapText.replace(/^\uFEFF/, ""), kind);
  if ("diagnostics" in result) {
    throw new UsageError(`${reportAsText(result.diagnostics, 1)}\nThe map cannot be used as it is.`);
  }
  const { mapping } = result;
  const encoding = encodingOf(bytes, mapping);
  const sheet = readSheet(decodedText(bytes, encoding), mapping.separator);
  const vocabulary = vocabularyOf(known.collection);
  const headingRows = mapping.headingRows ?? findHeadingRows(sheet.rows, isKnownHeading(kind, vocabulary));
  const columns = columnsOf(sheet.rows, headingRows);
  const strange = strangeHeading(mapping, columns);
  if (strange !== undefined) throw new UsageError(strange);
  const data = dataRows(sheet.rows, headingRows);
  const read = data.rows.map(rowReader(mapping, columns, vocabulary));
  const rows =
    kind === "sightings"
      ? checkedSightings(read, known.read, known.collection.sightings, vocabulary)
      : checkedItems(read, known.read, known.collection, vocabulary);
  const where =
    headingRows.length === 0
      ? "no headings"
      : `headings in ${headingRows.length === 1 ? "row" : "rows"} ${headingRows.join(" and ")}`;
  const left = [
    data.empty > 0 && counted(data.empty, "empty row"),
    data.repeatedHeadings > 0 &&
      counted(data.repeatedHeadings, "repetition of the headings", "repetitions of the headings"),
  ].filter(Boolean);
  const used = headingsRead(mapping);
  const unused = columns.filter(({ heading }) => !used.has(heading)).map(({ heading }) => heading);
  const about = [
    `${file}: ${encoding}, ${separatorWords[sheet.separator]}, ${where}, ${counted(data.rows.length, "row")}${left.length > 0 ? `; ${left.join(" and ")} left out` : ""}.`,
    ...(unused.length > 0 ? [`Columns that are not used: ${unused.join("; ")}.`] : []),
  ];
  return { kind, sheet, encoding, headingRows, about, rows };
}
