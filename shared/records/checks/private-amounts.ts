import type { Item } from "../item.ts";

/** An amount that is not published, with the field that has it. */
interface PrivateAmount {
  readonly amount: number;
  readonly currency: string;
  readonly field: string;
}

/** Amounts of money in a record, however deep. */
function amountsIn(data: unknown): { readonly amount: number; readonly currency: string }[] {
  if (typeof data !== "object" || data === null) return [];
  const { amount, currency } = data as { readonly amount?: unknown; readonly currency?: unknown };
  const isMoney = typeof amount === "number" && amount >= 1 && amount < 1e12;
  return isMoney && typeof currency === "string" && /^[A-Z]{3}$/.test(currency)
    ? [{ amount, currency }]
    : Object.values(data).flatMap(amountsIn);
}

/** What was paid or insured, by whomever, is never published; what is asked only where the item says so. */
export function privateAmounts({ document, publish }: Pick<Item, "document" | "publish">): PrivateAmount[] {
  return Object.entries((document.data ?? {}) as Readonly<Record<string, unknown>>).flatMap(
    ([field, value]) =>
      field === "price" && publish.price === "shown"
        ? []
        : amountsIn(value).map((each) => ({ ...each, field })),
  );
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

const forms = new Map<string, readonly string[]>();

/** How a currency may be written beside an amount: its code, its sign, its name (Unicode CLDR). */
function formsOf(currency: string): readonly string[] {
  const known = forms.get(currency);
  if (known) return known;
  const named = new Set([currency]);
  for (const language of ["en", "de"])
    for (const currencyDisplay of ["symbol", "narrowSymbol", "name"] as const)
      for (const count of [1, 2]) {
        const format = new Intl.NumberFormat(language, { style: "currency", currency, currencyDisplay });
        const name = format.formatToParts(count).find(({ type }) => type === "currency")?.value ?? currency;
        named.add(name).add(name.split(" ").at(-1) ?? name);
      }
  const found = [...named].map(escaped);
  forms.set(currency, found);
  return found;
}

/** The digits of a whole amount, with whatever parts its thousands. */
const thousandsOf = (whole: string): string => whole.replace(/(?<=\d)(?=(?:\d{3})+$)/g, "[.,'\u2019\\s]?");

/** Whether a text has the digits of an amount at all. Most have not, and to look for its currency as well takes many times as long. */
export const hasDigitsOf = ({ amount }: PrivateAmount, text: string): boolean =>
  new RegExp(thousandsOf(String(Math.trunc(amount)))).test(text);

/** An amount as a text may have it: with whatever parts its thousands, and with its currency beside it. */
export function amountPattern({ amount, currency }: PrivateAmount): RegExp {
  const [whole = "", fraction = ""] = String(amount).split(".");
  const cents = fraction === "" ? "(?:[.,](?:00|[-\u2013\u2014]))?" : `[.,]${fraction}0?`;
  const number = `(?<![\\p{N}.,])${thousandsOf(whole)}${cents}(?![\\p{N}]|[.,]\\p{N})`;
  const money = `(?:${formsOf(currency).join("|")})`;
  return new RegExp(`${money}\\s?${number}|${number}[\\s-]?${money}(?!\\p{L})`, "giu");
}
