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
};

/**
 * A date as people write it, as EDTF. What can be read in two ways is refused, and the reason says what to
 * put into the map to decide it.
 */
export function readDate(cell: string, rules: DateRules): Read<string> {
  const written = cell.replace(/[\u00a0\u202f]/g, " ").trim();
  if (rules.order === "edtf") return { value: written };
  const read = readSpan(written, rules);
  if (isRefused(read)) return { reason: `Found "${cell}"; expected ${read.reason}` };
  return parseEdtf(read.value)
    ? read
    : { reason: `Found "${cell}"; expected a date that exists (it was read as ${read.value}).` };
}

const about =
  /^(?:circa|approximately|approx\.?|around|about|abt\.?|vers|environ|um|c\.\s?a\.|ca\.?|c\.?)(?:\s+|(?<=\.)|(?=\d))/i;

function readSpan(written: string, rules: DateRules): Read<string> {
  const approximate = about.test(written);
  const uncertain = /\s*(?:\?|\(\?\))$/.test(written);
  const text = written.replace(about, "").replace(/\s*(?:\?|\(\?\))$/, "");
  const mark = approximate && uncertain ? "%" : approximate ? "~" : uncertain ? "?" : "";
  const marked = (read: Read<string>): Read<string> =>
    isRefused(read) ? read : { value: /^[[{]/.test(read.value) ? read.value : `${read.value}${mark}` };

  const between =
    /^(?:between|from)\s+(.+?)\s+(?:and|to)\s+(.+)$/i.exec(text) ??
    /^(.+?)\s+(?:to|until|till|bis)\s+(.+)$/i.exec(text) ??
    /^(.+?)\s*[–—]\s*(.+)$/.exec(text) ??
    /^(.+?)\s+-\s+(.+)$/.exec(text) ??
    /^(\d{4})\s*[-/]\s*(\d{4})$/.exec(text) ??
    /^(\d{4})\/(\d{2})$/.exec(text);
  if (between) {
    const [, first = "", last = ""] = between;
    // "1931–38" ends in the century that it begins in.
    const whole = /^\d{4}$/.test(first) && /^\d{2}$/.test(last) ? `${first.slice(0, 2)}${last}` : last;
    const [start, end] = [marked(readSingle(first, rules)), marked(readSingle(whole, rules))];
    if (isRefused(start)) return start;
    if (isRefused(end)) return end;
    return { value: `${start.value}/${end.value}` };
  }
  return marked(readSingle(text, rules));
}

function readSingle(text: string, rules: DateRules): Read<string> {
  let match: RegExpExecArray | null;
  if (/^\d{4}$/.test(text)) return { value: text };
  match = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})(?:[T ]\d{1,2}:\d{2}.*)?$/.exec(text);
  if (match) return { value: `${match[1]}-${two(Number(match[2]))}-${two(Number(match[3]))}` };
  match = /^(\d{4})[-./](\d{1,2})$/.exec(text);
  if (match) {
    const month = Number(match[2]);
    if (month >= 1 && month <= 12) return { value: `${match[1]}-${two(month)}` };
    return {
      reason: `a month, or two years in full such as ${match[1]}/${match[1]?.slice(0, 2)}${match[2]}; a season of EDTF is read where the map says dates: edtf.`,
    };
  }
  match = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?:,?\s+\d{1,2}:\d{2}.*)?$/.exec(text);
  if (match) return readDayAndMonth(match, rules);
  match = /^(\d{1,2})[./-](\d{4})$/.exec(text);
  if (match && Number(match[1]) <= 12) return { value: `${match[2]}-${two(Number(match[1]))}` };
  match = /^(?:the\s+)?(\d{3})0['’]?s$/i.exec(text);
  if (match) return { value: `${match[1]}X` };
  match = /^(?:the\s+)?(\d{1,2})(?:st|nd|rd|th) century$/i.exec(text);
  if (match) return { value: `${two(Number(match[1]) - 1)}XX` };
  match = /^(before|after)\s+(\d{4})$/i.exec(text);
  if (match) {
    const year = Number(match[2]);
    return { value: match[1]?.toLowerCase() === "before" ? `[..${year - 1}]` : `[${year + 1}..]` };
  }
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
        "a year of four digits; say two-digit-years-from: 1930 in the map to have 98 read as 1998 and 12 as 2012.",
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
      reason: "day and month that can be told apart; say dates: day-month or dates: month-day in the map.",
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

export interface DateEvidence {
  /** Each order that a cell proves, with that cell: more than one where they speak against each other. */
  readonly proofs: ReadonlyMap<"day-month" | "month-day", string>;
  readonly twoDigitYears: boolean;
}

/** What the cells of a column prove about its dates. */
export function dateEvidence(cells: Iterable<string>): DateEvidence {
  const proofs = new Map<"day-month" | "month-day", string>();
  let twoDigitYears = false;
  for (const cell of cells) {
    const match = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/.exec(cell.trim());
    if (match) {
      const [a, b] = [Number(match[1]), Number(match[3])];
      if (a > 12 && b <= 12 && !proofs.has("day-month")) proofs.set("day-month", cell);
      if (b > 12 && a <= 12 && !proofs.has("month-day")) proofs.set("month-day", cell);
      if (match[4]?.length === 2) twoDigitYears = true;
    } else if (/\p{L}{3,}\.?[\s,-]+\d{2}$/u.test(cell.trim())) twoDigitYears = true;
  }
  return { proofs, twoDigitYears };
}
