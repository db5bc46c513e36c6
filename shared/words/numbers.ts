import { remembered } from "./remembered.ts";
import { type Bound, wholePercent } from "./whole-percent.ts";

/**
 * The one place where numbers are rounded for reading. The data files keep every digit.
 *
 * - counted examples: whole numbers; "under 1" rather than a 0 that is not exact. The class on a rarity scale is that
 *   of the same whole number (shared/assessments/rarity/scale-class.ts), so that no page has 17 beside "9 to 16"
 * - shares: whole percent; "under 1 %" and "over 99 %" rather than a 0 or 100 that is not exact. Of a completeness with
 *   two ends the certain one is rounded down, and the possible one up (share-bounds.ts)
 * - estimated years and rates: two significant digits, and never more than two decimals; "under 0.01" rather
 *   than a 0 that is not exact
 * - a wait: as estimated years up to a hundred; beyond them no more than "over 100", since nobody waits so long. A short
 *   one is said in months (figure-phrase.ts), which are rounded as what is counted
 * - years between two dates: likewise, but whole from a hundred up, since the calendar counts them
 * - confidences, which are chosen, and the completeness that a figure was counted from: to hundredths of a percent
 * - units and weights, which are written and not estimated: as they are, to two decimals at most
 */
export interface NumberWords {
  readonly count: (value: number) => string;
  /** What is the least or the most is rounded so that it stays so. */
  readonly share: (value: number, bound?: Bound) => string;
  readonly exactShare: (value: number) => string;
  readonly estimate: (value: number) => string;
  readonly wait: (years: number) => string;
  /** What is the least or the most is rounded so that it stays so. */
  readonly span: (value: number, bound?: Bound) => string;
  readonly quantity: (value: number) => string;
  readonly money: (amount: number, currency: string) => string;
}

const moneyFormats = new Map<string, Intl.NumberFormat>();

/** Making one takes longer than a hundred sums of money. */
function moneyFormat(language: string, currency: string, isWhole: boolean): Intl.NumberFormat {
  const key = `${language} ${currency} ${isWhole}`;
  const format =
    moneyFormats.get(key) ??
    new Intl.NumberFormat(language, {
      style: "currency",
      currency,
      currencyDisplay: "code",
      minimumFractionDigits: isWhole ? 0 : 2,
    });
  moneyFormats.set(key, format);
  return format;
}

/** In years. */
const longestWait = 100;

/** Rounded down for a least and up for a most: to two digits, and to whole years from a hundred up. */
function boundary(value: number, bound: Bound): number {
  const step = value >= 100 ? 1 : value < 0.1 ? 0.01 : 10 ** (Math.floor(Math.log10(value)) - 1);
  const steps = value / step;
  // What stands on a step, but for an error of rounding, stays there.
  return step * (bound === "least" ? Math.floor(steps + 1e-9) : Math.ceil(steps - 1e-9));
}

/** `under` and `over` say that something lies below or above a number that is already written. */
export function numberWords(
  language: string,
  under: (written: string) => string,
  over: (written: string) => string,
): NumberWords {
  const whole = new Intl.NumberFormat(language, { maximumFractionDigits: 0 });
  const percent = new Intl.NumberFormat(language, { style: "percent", maximumFractionDigits: 0 });
  const significant = new Intl.NumberFormat(language, { maximumSignificantDigits: 2 });
  const hundredths = new Intl.NumberFormat(language, { maximumFractionDigits: 2 });
  const twoDigits = (value: number): string =>
    Math.abs(value) < 0.1 ? hundredths.format(value) : significant.format(value);
  const hundredthsOfPercent = new Intl.NumberFormat(language, { style: "percent", maximumFractionDigits: 2 });
  const estimate = (value: number): string =>
    value > 0 && value < 0.005 ? under(hundredths.format(0.01)) : twoDigits(value);
  const percentInWords = remembered((whole: number) => {
    if (whole === 0.5) return under(percent.format(0.01));
    return whole === 99.5 ? over(percent.format(0.99)) : percent.format(whole / 100);
  });
  return {
    count: remembered((value: number) =>
      value > 0 && value < 0.5 ? under(whole.format(1)) : whole.format(value),
    ),
    share: (value, bound) => percentInWords(wholePercent(value, bound)),
    exactShare: (value) => hundredthsOfPercent.format(value),
    estimate,
    wait: (years) => (years > longestWait ? over(whole.format(longestWait)) : estimate(years)),
    span: (value, bound) => {
      const years = bound ? boundary(value, bound) : value;
      return years >= 100 ? whole.format(years) : twoDigits(years);
    },
    quantity: (value) => hundredths.format(value),
    money: (amount, currency) => moneyFormat(language, currency, Number.isInteger(amount)).format(amount),
  };
}
