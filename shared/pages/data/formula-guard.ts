/**
 * A spreadsheet takes a cell that begins like this for a formula and runs it. An apostrophe in front makes it
 * text; one more in front of a cell that already has it keeps the two apart, so that the guard can be undone.
 */
const asFormula = /^'*[=+\-@\t\r]/;
const guardedCell = /^'+[=+\-@\t\r]/;

export const guarded = (cell: string): string => (asFormula.test(cell) ? `'${cell}` : cell);
export const unguarded = (cell: string): string => (guardedCell.test(cell) ? cell.slice(1) : cell);
