import type { ViewState } from "./view-state.ts";

/** What is asked as a number, which somebody may write in a way that cannot be read. */
export const numbered = ["least", "most", "from", "to"] as const satisfies readonly (keyof ViewState)[];
export type Numbered = (typeof numbered)[number];

const forms: Readonly<Record<"percent" | "year", RegExp>> = {
  percent: /^(\d{1,3}(?:[.,]\d+)?)\s*%?$/,
  year: /^(\d{3,4})$/,
};

/** Null where nothing is asked, or nothing that can be read. */
export function askedNumber(field: Numbered, asked: string): number | null {
  const form = field === "least" || field === "most" ? "percent" : "year";
  const digits = forms[form].exec(asked.trim())?.[1];
  const number = digits === undefined ? null : Number(digits.replace(",", "."));
  return number === null || (form === "percent" && number > 100) ? null : number;
}

/** What cannot be read asks nothing, and is to be told: the list would otherwise seem to answer to it. */
export const isUnread = (field: Numbered, asked: string): boolean =>
  asked.trim() !== "" && askedNumber(field, asked) === null;
