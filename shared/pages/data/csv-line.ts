const cellText = (cell: string, separator: string): string =>
  cell.includes('"') ||
  cell.includes("\n") ||
  cell.includes("\r") ||
  cell.includes(separator) ||
  cell !== cell.trim()
    ? `"${cell.replaceAll('"', '""')}"`
    : cell;

/** A row as RFC 4180 has it, without the end of its line. A row of one empty cell is quoted, or it would be no row. */
export function csvLine(cells: readonly string[], separator = ","): string {
  const line = cells.map((cell) => cellText(cell, separator)).join(separator);
  return line === "" ? '""' : line;
}
