/** A number with what is counted, in the form that the language has for that many. */
export type Counted = (number: number, one: string, many: string) => string;

/** A number that counts, in digits, with what parts its thousands. */
export const digitsIn = (language: string): ((number: number) => string) => {
  const numbers = new Intl.NumberFormat(language);
  return (number) => numbers.format(number);
};

/** For languages of two forms: CLDR's "one", and every other number. */
export function countedIn(language: string): Counted {
  const inDigits = digitsIn(language);
  const rules = new Intl.PluralRules(language);
  return (number, one, many) => `${inDigits(number)} ${rules.select(number) === "one" ? one : many}`;
}
