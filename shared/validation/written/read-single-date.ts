import { parseEdtf } from "../../dates/edtf-interval.ts";
import { monthFrom } from "./month-names.ts";
import { isRefused, type Read } from "./read.ts";

export type DateOrder = "day-month" | "month-day" | "edtf";

export interface DateRules {
  /** Which of two numbers is the day; edtf: the dates are EDTF already, and nothing else is read. */
  readonly order: DateOrder | undefined;
  /** The year that 00 to 99 are counted from: 1930 makes 98 1998 and 12 2012. */
  readonly twoDigitYearsFrom: number | undefined;
}

const two = (number: number) => String(number).padStart(2, "0");

/** Seasons, EDTF level 1. */
const seasons: Readonly<Record<string, number>> = {
  spring: 21,
  summer: 22,
  autumn: 23,
  fall: 23,
  winter: 24,
  frühling: 21,
  frühjahr: 21,
  sommer: 22,
  herbst: 23,
};

/**
 * The second of two years, of which only the last digits are written: "1931–38" ends in the century that it begins in,
 * but for noughts, with which the next begins.
 */
export function yearEndingIn(digits: string, first: string): string {
  const next = /^0+$/.test(digits) ? 10 ** digits.length : 0;
  return String(Number(first.slice(0, -digits.length) + digits) + next).padStart(4, "0");
}

/** One date, without a word before it or a mark after it. */
export function readSingleDate(text: string, rules: DateRules): Read<string> {
  let match: RegExpExecArray | null;
  if (/^\d{4}$/.test(text)) return { value: text };
  match = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})(?:[T ]\d{1,2}:\d{2}.*)?$/.exec(text);
  if (match) return { value: `${match[1]}-${two(Number(match[2]))}-${two(Number(match[3]))}` };
  match = /^(\d{4})[-./](\d{1,2})$/.exec(text);
  if (match) {
    const [, first = "", last = ""] = match;
    const month = Number(last);
    if (month >= 1 && month <= 12) return { value: `${first}-${two(month)}` };
    return {
      reason: `a month, or two years in full such as ${first}/${yearEndingIn(last, first)}; an EDTF season is read only where the map says dates: edtf.`,
    };
  }
  match = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?:,?\s+\d{1,2}:\d{2}.*)?$/.exec(text);
  if (match) return readDayAndMonth(match, rules);
  match = /^(\d{1,2})[./-](\d{4})$/.exec(text);
  if (match && Number(match[1]) <= 12) return { value: `${match[2]}-${two(Number(match[1]))}` };
  match = /^(?:the\s+)?(\d{3})0(?:['’]?s|er(?:[\s-]jahre)?)$/i.exec(text);
  if (match) return { value: `${match[1]}X` };
  match = /^(?:the\s+)?(\d{1,2})(?:st|nd|rd|th) century$/i.exec(text);
  if (match) return { value: `${two(Number(match[1]) - 1)}XX` };
  match = /^(\p{L}+)\s+(\d{4})$/u.exec(text);
  const season =
    match?.[1] && Object.hasOwn(seasons, match[1].toLowerCase())
      ? seasons[match[1].toLowerCase()]
      : undefined;
  if (match && season) return { value: `${match[2]}-${season}` };
  return readNamedMonth(text, rules) ?? readEdtf(text);
}

function readEdtf(text: string): Read<string> {
  if (parseEdtf(text)) return { value: text };
  const days = /^\d{5}$/.test(text)
    ? " Five digits may be a spreadsheet's count of days: show the column as dates, and save again."
    : "";
  return { reason: `a date such as 12 March 1998, 1998-03-12, March 1998, 1998 or c. 1931.${days}` };
}

function year(written: string, rules: DateRules): Read<number> {
  if (written.length === 4) return { value: Number(written) };
  const from = rules.twoDigitYearsFrom;
  if (from === undefined) {
    return {
      reason:
        "a year of four digits; write two-digit-years-from: 1930 in the map to have 98 read as 1998 and 12 as 2012.",
    };
  }
  return { value: from + ((Number(written) - (from % 100) + 100) % 100) };
}

/** 3/12/98: which is the day? A number above 12 decides it, points do (day first), else the map must. */
function readDayAndMonth(match: RegExpExecArray, rules: DateRules): Read<string> {
  const [, first = "", mark, second = "", written = ""] = match;
  const [a, b] = [Number(first), Number(second)];
  const proven = a > 12 && b <= 12 ? "day-month" : b > 12 && a <= 12 ? "month-day" : undefined;
  const order = rules.order ?? proven ?? (mark === "." || a === b ? "day-month" : undefined);
  if (proven !== undefined && order !== proven) {
    return {
      reason: `the ${order === "day-month" ? "day before the month" : "month before the day"}, as the map says.`,
    };
  }
  if (order === undefined) {
    return {
      reason:
        "a date in which day and month can be told apart; write dates: day-month or dates: month-day in the map.",
    };
  }
  const full = year(written, rules);
  if (isRefused(full)) return full;
  const [day, month] = order === "day-month" ? [a, b] : [b, a];
  return { value: `${full.value}-${two(month)}-${two(day)}` };
}

/** 12 March 1998; March 12, 1998; March 1998; 12-Mar-98; Mar-98. */
function readNamedMonth(text: string, rules: DateRules): Read<string> | undefined {
  const dayFirst =
    /^(\d{1,2})(?:st|nd|rd|th|er|\.)?[\s-]+(?:of\s+|de\s+)?(\p{L}+)\.?[\s,-]+(?:de\s+)?(\d{4}|\d{2})$/u.exec(
      text,
    );
  const monthFirst = /^(\p{L}+)\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4}|\d{2})$/u.exec(text);
  const alone = /^(\p{L}+)\.?[\s,-]+(?:de\s+)?(\d{4}|\d{2})$/u.exec(text);
  const [name, day, written] = dayFirst
    ? [dayFirst[2], dayFirst[1], dayFirst[3]]
    : monthFirst
      ? [monthFirst[1], monthFirst[2], monthFirst[3]]
      : [alone?.[1], undefined, alone?.[2]];
  const month = name === undefined ? undefined : monthFrom(name);
  if (month === undefined || written === undefined) return undefined;
  const full = year(written, rules);
  if (isRefused(full)) return full;
  return { value: `${full.value}-${two(month)}${day === undefined ? "" : `-${two(Number(day))}`}` };
}
