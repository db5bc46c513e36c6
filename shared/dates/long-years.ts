/** Beyond these years a day number would no longer be an exact whole number. */
const MOST_YEAR = 24e12;

const LONG_YEAR = /^Y(-?)([1-9]\d*)(?:E([1-9]\d*))?(?:S([1-9]\d*))?$/;
const SIGNIFICANT_YEAR = /^(-?)(\d{4})()S([1-9]\d*)$/;

/**
 * The first and last year of a date that is no more than a year in one of the long forms of EDTF:
 * `Y170000002`, `Y-17E7`, `Y3388E2S3`, `1950S2`; null for anything else.
 *
 * The S says how many digits are significant; the rest may be any. Leading zeros are not significant, so
 * that `0050S1` is 50 to 59. The letter Y is for years of more than four digits only.
 *
 * Source  Library of Congress, EDTF (4 February 2019), "Letter-prefixed calendar year", "Exponential year",
 *         "Significant digits"
 * Checks  longYears("1950S2") => [1900, 1999]
 *         longYears("Y3388E2S3") => [338000, 338999]
 *         longYears("Y-17E7") => [-170000000, -170000000]
 */
export function longYears(text: string): readonly [first: number, last: number] | null {
  const letterless = SIGNIFICANT_YEAR.exec(text);
  const [, sign, digits, exponent, significant] = letterless ?? LONG_YEAR.exec(text) ?? [];
  if (digits === undefined) return null;
  const year = Number(`${digits}e${exponent || 0}`);
  if (letterless === null ? year <= 9999 : sign === "-" && year === 0) return null;
  const open = significant === undefined ? 0 : Math.max(0, String(year).length - Number(significant));
  const unit = 10 ** open;
  const least = Math.floor(year / unit) * unit;
  const most = least + unit - 1;
  if (most > MOST_YEAR) return null;
  return sign === "-" ? [-most, -least] : [least, most];
}
