import { suggestion } from "../../diagnostics/nearest-name.ts";
import type { SourceDocument } from "../../source/document.ts";
import { within } from "../../source/read-records.ts";
import { typedCells } from "../sighting.ts";
import { entriesOf } from "./entries-of.ts";
import type { Intake } from "./intake.ts";

/** The rows of every log, each as a record: CSV tables, and YAML lists. */
export function* sightingRows({
  read,
  recordsOf,
  validator,
  report,
  tell,
}: Intake): Generator<SourceDocument> {
  const schema = validator.schemas.get("sighting");
  const known = Object.keys((schema?.properties as object | undefined) ?? {});
  for (const { file, table } of read.tables) {
    const header: SourceDocument = {
      file,
      data: table.columns,
      body: "",
      locate: ([column]) => table.locateColumn(String(column)),
    };
    const strange = table.columns.filter((column) => !known.includes(column));
    for (const column of strange) {
      const finding = {
        found: `a column "${column}"`,
        expected: "a known column",
        remedy: suggestion(column, known),
      };
      report("unknown-field", header, [column], finding);
    }
    for (const column of new Set(table.columns.filter((each, at) => table.columns.indexOf(each) !== at))) {
      report("unknown-field", header, [column], {
        found: `two columns "${column}"`,
        expected: "each column once",
      });
    }
    const isTable = table.columns.length > 0 || table.diagnostics.length === 0;
    const missing = ((schema?.required as string[] | undefined) ?? []).filter(
      (each) => !table.columns.includes(each),
    );
    if (isTable && missing.length > 0) {
      for (const column of missing)
        report("missing-field", header, [], { found: `no column "${column}"`, expected: "one" });
      continue;
    }
    tell(table.diagnostics);
    for (const row of table.rows) {
      const cells =
        strange.length === 0 ? row.cells : new Map([...row.cells].filter(([each]) => known.includes(each)));
      yield { file, data: typedCells(cells), body: "", locate: ([column]) => row.locate(column?.toString()) };
    }
  }
  for (const record of recordsOf("sightings")) {
    for (const [key, data] of entriesOf(record, report)) yield within(record.document, key, data);
  }
}
