import { csvLine } from "../../pages/data/csv-line.ts";
import { guarded } from "../../pages/data/formula-guard.ts";
import type { CheckedSheet } from "./checked-sheet.ts";
import { rejectedHeadings } from "./headings.ts";
import { reasonOf } from "./import-report.ts";

/**
 * The rows that were rejected, as they came, below the same headings, with their numbers and reasons in two more
 * columns: it can be corrected and brought in with the same map. The text is UTF-8; a byte order mark says so
 * where the map expects another encoding.
 */
export function rejectedText({ sheet, encoding, headingRows, rows }: CheckedSheet): string {
  const last = Math.max(0, ...headingRows);
  const rejected = rows.flatMap((row) => (row.fate === "rejected" ? [row] : []));
  const above = sheet.rows.slice(0, last);
  const width = Math.max(
    ...above.map(({ length }) => length),
    ...rejected.map(({ row }) => row.cells.length),
    1,
  );
  const line = (cells: readonly string[], extra: readonly [string, string]) => {
    const padded = Array.from({ length: width }, (_, at) => guarded(cells[at] ?? ""));
    return csvLine([...padded, ...extra], sheet.separator);
  };
  const lines = [
    ...above.map((cells, at) => line(cells, at === last - 1 ? rejectedHeadings : ["", ""])),
    ...rejected.map(({ row, problems }) =>
      line(row.cells, [String(row.number), guarded(reasonOf(problems))]),
    ),
    "",
  ].join("\r\n");
  return `${encoding === "utf-8" ? "" : "\uFEFF"}${lines}`;
}
