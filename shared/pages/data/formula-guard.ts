/**
 * A spreadsheet takes a cell that begins like this for a formula and runs it; that of an East Asian system also one with
 * the wide forms of the signs (U+FF1D, U+FF0B, U+FF0D, U+FF20). An apostrophe in front makes it text; one more in front of a
 * cell that already has it keeps the two apart, so that the guard can be undone.
 * Source  OWASP, CSV Injection, from memory
 */
const asFormula = /^'*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;
const guardedCell = /^'+[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;

export const guarded = (cell: string): string => (asFormula.test(cell) ? `'${cell}` : cell);
export const unguarded = (cell: string): string => (guardedCell.test(cell) ? cell.slice(1) : cell);
