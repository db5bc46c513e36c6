import { parseEdtf } from "../../dates/edtf-interval.ts";
import { isRefused } from "../../validation/written/read.ts";
import { dateEvidence, readDate } from "../../validation/written/read-date.ts";
import { provenDecimals, readAmount } from "../../validation/written/read-number.ts";
import type { DateRules } from "../../validation/written/read-single-date.ts";
import type { Mapping } from "./mapping.ts";

export const dateFields = ["seen", "examined", "updated"] as const;
export const amountFields = ["price", "paid"] as const;

const isEdtf = (cell: string): boolean => Boolean(parseEdtf(cell.trim()));

/** Any century will do where it is only asked whether something is a date. */
const anyRules: readonly DateRules[] = [
  { order: "day-month", twoDigitYearsFrom: 1930 },
  { order: "month-day", twoDigitYearsFrom: 1930 },
];

const isDate = (cell: string): boolean => anyRules.some((rules) => !isRefused(readDate(cell, rules)));
const isAmount = (cell: string, decimal: "." | ","): boolean => !isRefused(readAmount(cell, decimal));

/** The first date that is none of our own files', and one all the same. */
export const dateOfTheirs = (cells: readonly string[]): string | undefined =>
  [...new Set(cells)].find((cell) => !isEdtf(cell) && isDate(cell));

/** Whether the dates are written as in our own files, but for slips that are no dates at all. */
export const areOurDates = (cells: readonly string[]): boolean => dateOfTheirs(cells) === undefined;

/** The same of amounts: none has to be read with a comma before its decimals. */
export const areOurAmounts = (cells: readonly string[]): boolean =>
  ![...new Set(cells)].some((cell) => !isAmount(cell, ".") && isAmount(cell, ","));

/** Whether every date and amount that can be read has only one reading, so that nobody has to be asked for it. */
export function needsNoWord(
  dates: readonly string[],
  amounts: readonly string[],
  { dates: order, twoDigitYearsFrom, decimal }: Mapping,
): boolean {
  const [proven] = [...dateEvidence(dates).proofs.keys()];
  const isPlainDate = (cell: string): boolean => {
    const read = readDate(cell, { order, twoDigitYearsFrom });
    if (isRefused(read)) return !isEdtf(cell) && !isDate(cell);
    const unasked = readDate(cell, {
      order: order === proven ? proven : undefined,
      twoDigitYearsFrom: undefined,
    });
    return !isRefused(unasked) && unasked.value === read.value;
  };
  const isPlainAmount = (cell: string): boolean =>
    isRefused(readAmount(cell, decimal))
      ? !isAmount(cell, ".") && !isAmount(cell, ",")
      : decimal === undefined ||
        provenDecimals(new Set(amounts)).has(decimal) ||
        !isRefused(readAmount(cell, undefined));
  return (
    (order === "edtf" || [...new Set(dates)].every(isPlainDate)) &&
    (areOurAmounts(amounts) || [...new Set(amounts)].every(isPlainAmount))
  );
}
