import type { Decimal } from "../../validation/written/read-number.ts";
import type { DateOrder } from "../../validation/written/read-single-date.ts";

/** How those who write a language put numbers and dates, for a file that does not show it itself. */
export interface Habits {
  /** The language's name in English. */
  readonly name: string;
  readonly decimal: Decimal | undefined;
  /** Undefined where the language puts the year first, and in English, which has both orders. */
  readonly order: Exclude<DateOrder, "edtf"> | undefined;
}

export function habitsOf(language: string): Habits {
  const locale = /^[a-z]{2,3}(?:-[a-z]{2}$)?/i.exec(language)?.[0] ?? "en";
  const numbers = new Intl.NumberFormat(locale, { numberingSystem: "latn" }).formatToParts(1.5);
  const sign = numbers.find(({ type }) => type === "decimal")?.value;
  const [first] = new Intl.DateTimeFormat(locale)
    .formatToParts()
    .flatMap(({ type }) => (type === "literal" ? [] : [type]));
  const order = first === "day" ? "day-month" : first === "month" ? "month-day" : undefined;
  return {
    name: new Intl.DisplayNames("en", { type: "language" }).of(locale) ?? locale,
    decimal: sign === "." || sign === "," ? sign : undefined,
    order: /^en$/i.test(locale) ? undefined : order,
  };
}
