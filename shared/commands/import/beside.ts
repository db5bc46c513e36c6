/** What lies beside a spreadsheet, by its name with another ending. */
export const beside = (spreadsheet: string, ending: string): string =>
  `${spreadsheet.replace(/\.(?:csv|tsv|txt)$/i, "")}${ending}`;
