import { parse } from "csv-parse/sync";
import { csvLine } from "../../pages/data/csv-line.ts";
import { lineEnds } from "../../source/csv-rows.ts";
import { fieldsOf } from "./fields.ts";

type Cells = ReadonlyMap<string, string>;

const order = fieldsOf("sightings").map(({ name }) => name);

/** The text of a log with rows added: behind those that it has, in its own columns, with new ones where they are needed, and with its own line ends. */
export function logText(existing: string | null, rows: readonly Cells[]): string {
  const needed = new Set<string>(["seen", "variant", "kind"]);
  for (const cells of rows) for (const column of cells.keys()) needed.add(column);
  const written =
    existing === null
      ? []
      : parse(existing, {
          record_delimiter: [...lineEnds],
          relax_column_count: true,
          skip_empty_lines: true,
        });
  const [header = []] = written;
  const own = header.map((column) => column.trim());
  const missing = order.filter((column) => needed.has(column) && !own.includes(column));
  const columns = existing === null ? missing : [...own, ...missing];
  const lines = rows.map((cells) => csvLine(columns.map((column) => cells.get(column) ?? "")));
  const end = /\r\n|\n|\r/.exec(existing ?? "")?.[0] ?? "\n";
  // What is there stays byte for byte, unless it needs another column.
  const before =
    existing === null
      ? [csvLine(columns)]
      : missing.length === 0
        ? [existing.replace(/(?:\r\n|\n|\r)$/, "")]
        : [columns, ...written.slice(1)].map((row) =>
            csvLine([...row, ...columns.slice(row.length).map(() => "")]),
          );
  return `${[...before, ...lines].join(end)}${end}`;
}
