import { isRefused, type Read } from "./read.ts";

export type Decimal = "." | ",";

export interface Amount {
  readonly number: number;
  /** ISO 4217, where the cell says it. */
  readonly currency: string | undefined;
  /** A sign that several currencies use. */
  readonly sign: string | undefined;
}

const signs: Readonly<Record<string, string>> = { "€": "EUR", "£": "GBP" };
const names: Readonly<Record<string, string>> = { EURO: "EUR", EUROS: "EUR", DM: "DEM" };

/** A currency as people write it, as its code; any other word as it stands. */
export function currencyCode(written: string): string {
  const word = written.trim().toUpperCase();
  return signs[word] ?? names[word] ?? word;
}

/** "1.250,50 EUR", "£1,250.50", "1 250", "420,-": a number as people write it, with its currency. */
export function readAmount(cell: string, decimal: Decimal | undefined): Read<Amount> {
  const refuse = (expected: string) => ({ reason: `Found "${cell}"; expected ${expected}.` });
  let text = cell.trim();
  const code = /(?<![A-Za-z])(?:[A-Z]{3}|[Ee]uros?|EUROS?|DM)(?![A-Za-z])/.exec(text)?.[0];
  const sign = /\p{Sc}/u.exec(text)?.[0];
  const currency = code !== undefined ? currencyCode(code) : sign === undefined ? undefined : signs[sign];
  text = text
    .replace(code ?? "", "")
    .replace(/\p{Sc}/gu, "")
    .trim();
  // A dash in place of the cents: what stands before it is the decimal sign.
  const [dash, ofCents] = /([.,])(?:-|–|—)+$/u.exec(text) ?? [];
  if (dash !== undefined)
    text = `${text.slice(0, -dash.length)}${/[.,]/.test(text.slice(0, -dash.length)) ? `${ofCents}0` : ""}`;
  // Spaces and apostrophes part thousands in some countries.
  text = text.replace(/(?<=\d)[\s'’](?=\d{3}(?!\d))/gu, "");
  if (!/^-?\d[\d.,]*$/.test(text)) return refuse("a number");
  const plain = plainNumber(text, decimal);
  if (plain === "ambiguous") {
    return refuse('a number whose decimal sign is clear; write decimal: "." or decimal: "," in the map');
  }
  if (plain === "thousandths") {
    return refuse(
      `an amount that can be read in one way only: "${decimal}" stands before the decimals, and no price has three of them`,
    );
  }
  if (plain === undefined)
    return refuse(decimal ? `a number with "${decimal}" before the decimals` : "a number");
  const known = sign !== undefined && currency === undefined ? sign : undefined;
  return { value: { number: Number(plain), currency, sign: known } };
}

/**
 * Digits with one point at most; or "ambiguous" where 1.250 may be one and a quarter, or a thousand and more;
 * or "thousandths" where the decimal sign would make of it what nobody asks for an outfit.
 */
function plainNumber(
  text: string,
  decimal: Decimal | undefined,
): string | "ambiguous" | "thousandths" | undefined {
  const marks = text.match(/[.,]/g) ?? [];
  if (marks.length === 0) return text;
  const last = marks.at(-1) as Decimal;
  const kinds = new Set(marks);
  const grouped = (mark: string) => new RegExp(`^-?\\d{1,3}(?:\\${mark}\\d{3})+$`).test(text);
  if (kinds.size === 1 && marks.length > 1) {
    return grouped(last) && decimal !== last ? text.replaceAll(last, "") : undefined;
  }
  if (kinds.size === 2) {
    const other = last === "." ? "," : ".";
    const form = new RegExp(`^-?\\d{1,3}(?:\\${other}\\d{3})+\\${last}\\d+$`);
    if (!form.test(text) || (decimal !== undefined && decimal !== last)) return undefined;
    return text.replaceAll(other, "").replace(last, ".");
  }
  if (grouped(last) && !/^-?0/.test(text)) {
    if (decimal === undefined) return "ambiguous";
    return decimal === last ? "thousandths" : text.replace(last, "");
  }
  if (!/^-?\d+[.,]\d+$/.test(text) || (decimal !== undefined && decimal !== last)) return undefined;
  return text.replace(last, ".");
}

const readsBy = (cell: string, decimal: Decimal | undefined): boolean =>
  !isRefused(readAmount(cell, decimal));

/** The decimal signs that the cells of a column prove: more than one where they speak against each other. */
export function provenDecimals(cells: Iterable<string>): ReadonlySet<Decimal> {
  const proven = new Set<Decimal>();
  for (const cell of cells) {
    // What can be read in two ways proves neither.
    if (!readsBy(cell, undefined)) continue;
    for (const decimal of [".", ","] as const) {
      if (readsBy(cell, decimal) && !readsBy(cell, decimal === "." ? "," : ".")) proven.add(decimal);
    }
  }
  return proven;
}

/** Whether a cell that can be read in two ways is no price by this decimal sign, and one by the other. */
export const speaksAgainst = (cell: string, decimal: Decimal): boolean =>
  !readsBy(cell, undefined) && !readsBy(cell, decimal) && readsBy(cell, decimal === "." ? "," : ".");
