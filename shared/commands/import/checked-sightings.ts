import { addUnder } from "../../lists/grouping.ts";
import { oneForm, sightingKey } from "../../records/checks/same-sighting.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import type { Sighting } from "../../records/sighting.ts";
import type { CsvRow } from "../../source/csv.ts";
import type { ReadCollection } from "../../source/read-records.ts";
import { recordValidator } from "../../validation/record-validator.ts";
import { referenceKinds } from "../collection/record-problems.ts";
import { type CheckedRow, rowDocuments } from "./checked-row.ts";
import type { ReadRow } from "./read-row.ts";
import { type SightingCells, sightingCells } from "./sighting-cells.ts";
import type { Vocabulary } from "./vocabulary.ts";

const file = "content/sightings/the-spreadsheet.csv";

/** What two rows of one sighting agree in, as far as both say it; how it was seen is what is most often corrected. */
const tellingFields = (row: Sighting): readonly (string | undefined)[] =>
  [
    row.serial,
    row.example,
    row.source,
    row.list,
    row.condition,
    row.price === undefined ? undefined : `${row.price} ${row.currency ?? ""}`,
    row.present.length + row.absent.length === 0 ? undefined : JSON.stringify([row.present, row.absent]),
    row.note,
  ].map((value) => value && oneForm(value));

/** Whether a row may say in other words what another says: something of it is the same, and nothing else. */
function isAlike(one: Sighting, other: Sighting): boolean {
  const [a, b] = [tellingFields(one), tellingFields(other)];
  const both = a.flatMap((value, at) =>
    value === undefined || b[at] === undefined ? [] : [value === b[at]],
  );
  return both.length > 0 && both.every(Boolean);
}

const dayAndVariant = ({ seen, variant }: Sighting): string => `${seen.text} ${variant}`;

/** Holds rows against the collection as `check` would, and against the rows that its logs already have. */
export function checkedSightings(
  rows: readonly ReadRow[],
  read: ReadCollection,
  known: readonly Sighting[],
  vocabulary: Vocabulary,
): CheckedRow<SightingCells["cells"]>[] {
  const { documentOf, errorsByRow } = rowDocuments();
  const made = rows.map((row) => ({ row, ...sightingCells(row, vocabulary) }));
  const ready = made.filter(({ problems }) => problems.length === 0);
  const columns = ["seen", "variant", "kind"];
  const seenColumns = new Set(columns);
  for (const { cells } of ready) for (const column of cells.keys()) seenColumns.add(column);
  const table = {
    columns: [...seenColumns],
    header: "",
    locateColumn: (column: string) => documentOf(file, 0, null, "").locate([column]),
    rows: ready.map(
      ({ row, cells }): CsvRow => ({
        cells,
        cell: (column) => cells.get(column) ?? "",
        line: "",
        locate: (column) =>
          documentOf(file, row.number, null, "").locate(column === undefined ? [] : [column]),
      }),
    ),
    diagnostics: [],
  };
  const built = collectionFrom(
    {
      ...read,
      records: read.records.filter(({ kind }) => referenceKinds.includes(kind)),
      tables: [{ kind: "sightings", file, id: "the-spreadsheet", table }],
      diagnostics: [],
    },
    recordValidator(),
  );
  const errors = errorsByRow(built.diagnostics, (each) => each === file);
  const sound = new Map(
    (built.collection?.sightings ?? []).map((sighting) => [
      sighting.document.locate([]).place.line,
      sighting,
    ]),
  );
  // A log may hold the same row twice, two sightings that nothing tells apart: each is matched by one row only.
  const there = new Map<string, number>();
  for (const sighting of known) there.set(sightingKey(sighting), (there.get(sightingKey(sighting)) ?? 0) + 1);

  const knownOf = new Map<string, Sighting[]>();
  for (const sighting of known) addUnder(knownOf, dayAndVariant(sighting), sighting);

  return made.map(({ row, cells, problems }): CheckedRow<SightingCells["cells"]> => {
    const refused = [...problems, ...(errors.get(row.number) ?? [])];
    const sighting = sound.get(row.number);
    if (refused.length > 0) return { row, fate: "rejected", problems: refused };
    if (!sighting) {
      const reason =
        "Found a row that depends on a reference with errors; expected a collection that passes check.";
      return { row, fate: "rejected", problems: [{ field: "variant", reason }] };
    }
    const key = sightingKey(sighting);
    const left = there.get(key) ?? 0;
    if (left === 0) {
      const alike = knownOf.get(dayAndVariant(sighting))?.find((other) => isAlike(sighting, other));
      return { row, fate: "new", content: cells, resembles: alike?.document.file };
    }
    there.set(key, left - 1);
    return { row, fate: "known" };
  });
}
