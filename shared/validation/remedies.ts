import type { ErrorObject } from "ajv";
import { parseEdtf } from "../dates/edtf-interval.ts";
import { isRefused } from "./written/read.ts";
import { readDate } from "./written/read-date.ts";
import { readAmount } from "./written/read-number.ts";

/** How a date that people write otherwise is written here, or what is wrong with one that looks like EDTF. */
export function dateRemedy(text: string): string | undefined {
  const read = readDate(text, { order: undefined, twoDigitYearsFrom: undefined });
  if (!isRefused(read)) return `Write "${read.value}".`;
  const [from, to, ...more] = text.split("/");
  if (to !== undefined && more.length === 0 && from && to && parseEdtf(from) && parseEdtf(to))
    return "Its end lies before its beginning.";
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return "There is no such day.";
  return /^\d{4}-\d{2}$/.test(text) ? "There is no such month." : undefined;
}

/** How an amount of money is written that stands as a number, or as text that can be read in one way only. */
export function amountRemedy(data: unknown): string | undefined {
  if (typeof data !== "string" && typeof data !== "number") return undefined;
  const read = readAmount(String(data), typeof data === "number" ? "." : undefined);
  if (isRefused(read)) return undefined;
  const { number, currency = "…" } = read.value;
  return `Write { amount: ${Number.isInteger(number) ? number : number.toFixed(2)}, currency: ${currency} }.`;
}

/** What somebody means who writes a number, or yes or no, where the state of a part belongs. */
export function stateRemedy(data: unknown): string | undefined {
  if (typeof data === "boolean") return `Write ${data ? "present" : "absent"}.`;
  if (data === 0) return "Write absent.";
  const isCount = typeof data === "number" && Number.isInteger(data) && data > 0;
  return isCount ? `Write { state: present, quantity: ${data} }.` : undefined;
}

/** A feature that is seen, but not for certain, is one of which nothing is known. */
export const doubtRemedy = (data: unknown): string | undefined =>
  typeof data === "object" || String(data).includes("?")
    ? "Leave out a feature of which you are not certain, and say in the description what was seen."
    : undefined;

export const commaRemedy = (field: string, text: string): string =>
  `Put a text that contains a comma in quotation marks: ${field}: ${JSON.stringify(text)}.`;

/** Text that YAML reads as it stands; any other stands in quotation marks. */
const asWritten = (text: string): string =>
  /^\p{L}[\p{L}\p{N} .'-]*$/u.test(text) ? text : JSON.stringify(text);

/** A name as a bibliography has it: the last word is the family's, unless a comma says otherwise. */
function personFrom(text: string): string {
  const name = text.trim();
  const [, family, given] = /^([^,]+),\s*([^,]+)$/.exec(name) ?? [];
  const [, first, last] = /^(.+)\s(\S+)$/.exec(name) ?? [];
  const [of, by] = family === undefined ? [last, first] : [family, given];
  if (of === undefined || by === undefined) return `{ literal: ${asWritten(name)} }`;
  return `{ family: ${asWritten(of)}, given: ${asWritten(by)} }`;
}

/** How one text is written where a list is asked for, or a person, or a list of them. */
export function formRemedy(data: unknown, isList: boolean, isPerson: boolean): string | undefined {
  if (typeof data !== "string" || data.trim() === "" || !(isList || isPerson)) return undefined;
  const one = isPerson ? personFrom(data) : asWritten(data.trim());
  return `Write ${isList ? `[${one}]` : one}${isPerson ? ", or literal: for a name without parts" : ""}.`;
}

/** A number whose point may stand before decimals, or part thousands. */
const unclearNumber = /^(-?[1-9]\d{0,2})\.(\d{3})$/;

export function quotingRemedy(error: ErrorObject): string | undefined {
  const unclear = typeof error.data === "string" ? unclearNumber.exec(error.data) : null;
  if (unclear && error.params.type === "number")
    return `Write ${unclear[1]}${unclear[2]} or ${Number(error.data)}, whichever it is.`;
  const types = [error.params.type].flat();
  const scalar = typeof error.data === "number" || typeof error.data === "boolean";
  return types.includes("string") && scalar ? "Put it in quotation marks." : undefined;
}
