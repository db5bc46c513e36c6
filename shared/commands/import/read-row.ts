import { wellFormedId } from "../../diagnostics/plain-words.ts";
import { unguarded } from "../../pages/data/formula-guard.ts";
import { isRefused } from "../../validation/written/read.ts";
import { readDate } from "../../validation/written/read-date.ts";
import { readAmount } from "../../validation/written/read-number.ts";
import { fieldsOf, type Reader } from "./fields.ts";
import type { Column, DataRow } from "./headings.ts";
import { knownWordsOf } from "./known-words.ts";
import { headingsRead, type Mapping, type Reading } from "./mapping.ts";
import { readFlag, saysNothing } from "./readings.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface RowProblem {
  readonly field: string;
  readonly reason: string;
}

/** A row with its fields as text in the collection's own terms. What a cell does not say is left out. */
export interface ReadRow {
  readonly number: number;
  readonly cells: readonly string[];
  readonly fields: ReadonlyMap<string, string>;
  /** Part or feature to what its column says, still in the spreadsheet's words. */
  readonly parts: ReadonlyMap<string, string>;
  readonly features: ReadonlyMap<string, string>;
  readonly problems: readonly RowProblem[];
}

const prose = new Set(["note", "description", "title", "condition"]);

const everything =
  /^(?:rest|(?:all|everything)(?: else| others| other parts| the rest)?|complete|the rest|others|alles|alle|rest(?:liche)?|vollständig|komplett)$/i;

/** The names in a cell of several. */
function namesIn(cell: string, separator: string | undefined, isKnown: (name: string) => boolean): string[] {
  const parted =
    separator !== undefined
      ? cell.split(separator)
      : /[;\n]/.test(cell)
        ? cell.split(/[;\n]/)
        : isKnown(cell)
          ? [cell]
          : cell.split(/[,/+&]|\band\b|\bund\b/i);
  return parted.map((name) => name.trim()).filter((name) => name !== "");
}

/** A word of the spreadsheet as the map has it; null where the map has it say nothing. */
const translated = ({ values }: Reading, word: string): string | null => {
  const said = values.get(word);
  return said === undefined ? word : said;
};

/** Makes the reader of a sheet's rows by a map. */
export function rowReader(mapping: Mapping, columns: readonly Column[], vocabulary: Vocabulary) {
  const indexOf = new Map(columns.map(({ heading, index }) => [heading, index]));
  const readerOf = new Map<string, Reader>(fieldsOf(mapping.kind).map(({ name, reader }) => [name, reader]));
  const rules = { order: mapping.dates, twoDigitYearsFrom: mapping.twoDigitYearsFrom };
  // Dates that are EDTF already are those of an export: its cells mean what they say, to the letter.
  const literal = mapping.dates === "edtf";
  const used = headingsRead(mapping);
  const beyond = columns.filter(({ heading, beyond }) => beyond && !used.has(heading));
  const currencyGiven = mapping.fields.has("currency");

  const written = (reading: Reading, row: DataRow): string => {
    if (reading.always !== undefined) return reading.always;
    const said: string[] = [];
    for (const heading of reading.columns) {
      const cell = unguarded((row.cells[indexOf.get(heading) ?? -1] ?? "").trim());
      const meant = translated(reading, cell);
      if (meant) said.push(meant.normalize("NFC"));
    }
    return said.join("; ");
  };

  const readParts = (reading: Reading, cell: string, variant: string | undefined): string =>
    namesIn(cell, reading.separator, (name) => vocabulary.part(variant, name) !== undefined)
      .flatMap((name) => translated(reading, name) ?? [])
      .map((name) => (everything.test(name) ? "rest" : (vocabulary.part(variant, name) ?? name)))
      .join(";");

  /** "unknown", "n/a" and the like, in a cell that is not prose: a number so written would make one example of many. */
  const isSilent = (field: string, reader: Reader, cell: string, variant: string | undefined): boolean => {
    if (literal || !saysNothing(cell) || (reader === "text" && prose.has(field))) return false;
    if (reader === "source") return vocabulary.source(cell) === undefined;
    return reader !== "parts" || vocabulary.part(variant, cell) === undefined;
  };

  return (row: DataRow): ReadRow => {
    const fields = new Map<string, string>();
    const problems: RowProblem[] = [];
    for (const { index, heading } of beyond) {
      const cell = row.cells[index];
      if (!cell) continue;
      const reason = `Found "${cell}" in ${heading}, beyond the headings; expected nothing there. Put a cell that contains the separator in quotation marks, and give a heading to every column that holds something.`;
      problems.push({ field: "", reason });
    }
    const variantReading = mapping.fields.get("variant");
    const variantWritten = variantReading ? written(variantReading, row) : "";
    const variant = vocabulary.variant(variantWritten);

    const read = (field: string, reader: Reader, reading: Reading, cell: string) => {
      const refuse = (reason: string) => void problems.push({ field, reason });
      switch (reader) {
        case "date": {
          const date = readDate(cell, rules);
          return isRefused(date) ? refuse(date.reason) : void fields.set(field, date.value);
        }
        case "amount": {
          // What an export wrote is a structure of its own.
          if (cell.startsWith("{")) return void fields.set(field, cell);
          const amount = readAmount(cell, mapping.decimal ?? (literal ? "." : undefined));
          if (isRefused(amount)) return refuse(amount.reason);
          const { number, currency, sign } = amount.value;
          if (sign !== undefined && !currencyGiven) {
            return refuse(
              `Found "${cell}"; expected a currency that is clear; write currency: { always: … } in the map.`,
            );
          }
          fields.set(field, String(number));
          if (currency !== undefined) fields.set(`${field} currency`, currency);
          return;
        }
        case "flag": {
          const flag = readFlag(cell);
          return isRefused(flag) ? refuse(flag.reason) : void fields.set(field, String(flag.value));
        }
        case "variant":
          return void fields.set(field, variant ?? cell);
        case "source": {
          const source = vocabulary.source(cell);
          if (source === undefined && !wellFormedId.test(cell)) {
            return refuse(
              `Found "${cell}"; expected the id or the title of a source in content/sources.yaml. Add it there, or say in the map which it is.`,
            );
          }
          return void fields.set(field, source ?? cell);
        }
        case "parts": {
          const names = readParts(reading, cell, variant);
          return names === "" ? undefined : void fields.set(field, names);
        }
        case "record-kind":
        case "status":
          return void fields.set(field, knownWordsOf[reader]?.of(cell) ?? cell);
        default:
          return void fields.set(field, cell);
      }
    };

    for (const [field, reading] of mapping.fields) {
      const reader = readerOf.get(field);
      const cell = field === "variant" ? variantWritten : written(reading, row);
      if (reader === undefined || cell === "" || isSilent(field, reader, cell, variant)) continue;
      read(field, reader, reading, cell);
    }
    // The same currency for every row says nothing of a row without an amount.
    const everyRow = mapping.fields.get("currency")?.always !== undefined;
    if (everyRow && !fields.has("price") && !fields.has("paid")) fields.delete("currency");
    const own = (readings: ReadonlyMap<string, Reading>) =>
      new Map(
        [...readings].flatMap(([name, reading]) => {
          const cell = written(reading, row);
          return cell === "" || (!literal && saysNothing(cell)) ? [] : [[name, cell] as const];
        }),
      );
    return {
      number: row.number,
      cells: row.cells,
      fields,
      parts: own(mapping.parts),
      features: own(mapping.features),
      problems,
    };
  };
}
