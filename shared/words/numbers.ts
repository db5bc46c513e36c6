/**
 * The one place where numbers are rounded for reading. The data files keep every digit.
 *
 * - examples: whole numbers
 * - shares: whole percent; "under 1 %" and "over 99 %" rather than a 0 or 100 that is not exact
 * - years and rates: two significant digits, and never more than two decimals
 */
export interface NumberWords {
  readonly count: (value: number) => string;
  readonly share: (value: number) => string;
  readonly measure: (value: number) => string;
  readonly money: (amount: number, currency: string) => string;
}

export function numberWords(language: string, underOne: string, overNinetyNine: string): NumberWords {
  const whole = new Intl.NumberFormat(language, { maximumFractionDigits: 0 });
  const percent = new Intl.NumberFormat(language, { style: "percent", maximumFractionDigits: 0 });
  const significant = new Intl.NumberFormat(language, { maximumSignificantDigits: 2 });
  const hundredths = new Intl.NumberFormat(language, { maximumFractionDigits: 2 });
  return {
    count: (value) => whole.format(value),
    share: (value) => {
      if (value > 0 && value < 0.005) return underOne;
      if (value < 1 && value >= 0.995) return overNinetyNine;
      return percent.format(value);
    },
    measure: (value) => {
      if (value === 0) return "0";
      if (Math.abs(value) >= 100) return whole.format(value);
      return Math.abs(value) < 0.1 ? hundredths.format(value) : significant.format(value);
    },
    money: (amount, currency) =>
      new Intl.NumberFormat(language, {
        style: "currency",
        currency,
        currencyDisplay: "code",
        minimumFractionDigits: Number.isInteger(amount) ? 0 : 2,
      }).format(amount),
  };
}
