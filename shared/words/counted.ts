/** A number with what is counted, in the form that the language has for that many. */
export type Counted = (number: number, one: string, many: string) => string;

/** For languages of two forms: CLDR's "one", and every other number. */
export function countedIn(language: string): Counted {
  const numbers = new Intl.NumberFormat(language);
  const rules = new Intl.PluralRules(language);
  return (number, one, many) => `${numbers.format(number)} ${rules.select(number) === "one" ? one : many}`;
}
