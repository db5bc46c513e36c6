/**
 * The first and last year that a year may stand for of which only the first digits are significant.
 * Leading zeros are not significant, so that year 50 to one significant digit is 50 to 59.
 *
 * Source  Library of Congress, EDTF (4 February 2019), "Significant digits"
 * Checks  significantYears(1950, 2) => [1900, 1999]
 *         significantYears(338800, 3) => [338000, 338999]
 *         significantYears(-1950, 2) => [-1999, -1900]
 *         significantYears(1950, 5) => [1950, 1950]
 */
export function significantYears(year: number, digits: number): readonly [first: number, last: number] {
  const unit = 10 ** Math.max(0, String(Math.abs(year)).length - digits);
  const least = Math.floor(Math.abs(year) / unit) * unit;
  const most = least + unit - 1;
  return year < 0 ? [-most, -least] : [least, most];
}
