import { parseEdtf } from "../../dates/edtf-interval.ts";
import { type Doubt, signOf, withoutDoubt } from "./doubt.ts";
import { isRefused, type Read } from "./read.ts";
import { type DateRules, readSingleDate, yearEndingIn } from "./read-single-date.ts";

/** Nobody writes a date in more letters; looking for its two ends in a page of blanks would never be over. */
const longest = 200;

/**
 * A date as people write it, as EDTF. What can be read in two ways is refused, and the reason says what to
 * put into the map, or into the cell, to decide it.
 */
export function readDate(cell: string, rules: DateRules): Read<string> {
  if (cell.length > longest)
    return { reason: `Found ${cell.length} letters ("${cell.slice(0, 40)}…"); expected a date.` };
  const written = cell.replace(/[\u00a0\u202f]/g, " ").trim();
  if (rules.order === "edtf") return { value: written };
  const read = readSpan(written, rules);
  if (isRefused(read)) return { reason: `Found "${cell}"; expected ${read.reason}` };
  return parseEdtf(read.value)
    ? read
    : { reason: `Found "${cell}"; expected a date that exists (it was read as ${read.value}).` };
}

/** Two dates of which one is the beginning and the other the end. */
function endsIn(text: string): readonly [string, string] | undefined {
  const match =
    /^from\s+(.+?)\s+(?:and|to)\s+(.+)$/i.exec(text) ??
    /^(.+?)\s+(?:to|until|till|bis)\s+(.+)$/i.exec(text) ??
    /^(.+?)\s*[–—]\s*(.+)$/.exec(text) ??
    /^(.+?)\s+-\s+(.+)$/.exec(text) ??
    /^(\d{4})\s*[-/]\s*(\d{4})$/.exec(text) ??
    /^(\d{4})\/(\d{2})$/.exec(text);
  if (!match) return undefined;
  const [, first = "", last = ""] = match;
  return [first, /^\d{4}$/.test(first) && /^\d{2}$/.test(last) ? yearEndingIn(last, first) : last];
}

/** "1905/04" is a month, since the second of two years would come before the first, and "1912/13" can be none. */
function readMonthOrYears(text: string): Read<string> | undefined {
  const [, year, short] = /^(\d{4})\/(\d{1,2})$/.exec(text) ?? [];
  if (year === undefined || short === undefined || Number(short) < 1 || Number(short) > 12) return undefined;
  const month = `${year}-${short.padStart(2, "0")}`;
  if (Number(short) <= Number(year.slice(-short.length))) return { value: month };
  return {
    reason: `a month or two years that can be told apart: ${month}, or ${year}/${yearEndingIn(short, year)}.`,
  };
}

function readSpan(written: string, rules: DateRules): Read<string> {
  const { text, doubt } = withoutDoubt(written);
  const [, first, last] = /^between\s+(.+?)\s+and\s+(.+)$/i.exec(text) ?? [];
  if (first !== undefined && last !== undefined) return readChoice(first, last, doubt, rules);
  const ends = readMonthOrYears(text) ? undefined : endsIn(text);
  if (!ends) return readMarked(text, doubt, rules);
  const [start, end] = [readMarked(ends[0], doubt, rules), readMarked(ends[1], doubt, rules)];
  if (isRefused(start)) return start;
  return isRefused(end) ? end : { value: `${start.value}/${end.value}` };
}

/** One event at some time from the one date to the other, where a span lasts all that time. */
function readChoice(first: string, last: string, doubt: Doubt, rules: DateRules): Read<string> {
  const [start, end] = [readMarked(first, doubt, rules), readMarked(last, doubt, rules)];
  if (isRefused(start)) return start;
  if (isRefused(end)) return end;
  if (start.value.split("-").length !== end.value.split("-").length)
    return { reason: "two dates that are both years, both months or both days." };
  return { value: `[${start.value}..${end.value}]` };
}

function readMarked(written: string, ofWhole: Doubt, rules: DateRules): Read<string> {
  const { text, doubt } = withoutDoubt(written, ofWhole);
  const [, side, named = ""] = /^(before|after|vor|nach)\s+(.+)$/i.exec(text) ?? [];
  if (side === undefined) return marked(readMonthOrYears(text) ?? readSingleDate(text, rules), doubt);
  const isBefore = /^(?:before|vor)$/i.test(side);
  const year = withoutDoubt(named, doubt);
  if (!/^\d{4}$/.test(year.text)) {
    return {
      reason: isBefore
        ? 'a year after "before"; for any time up to a certain day, write [..1931-04-30].'
        : 'a year after "after"; for any time from a certain day on, write [1931-05-02..].',
    };
  }
  const beside = (years: number) =>
    `${String(Number(year.text) + years).padStart(4, "0")}${signOf(year.doubt)}`;
  return { value: isBefore ? `[..${beside(-1)}]` : `[${beside(1)}..]` };
}

function marked(read: Read<string>, doubt: Doubt): Read<string> {
  const sign = signOf(doubt);
  if (isRefused(read) || sign === "") return read;
  return /^[[{]/.test(read.value)
    ? { reason: `the doubt at each of its dates, such as [1931${sign},1932${sign}].` }
    : { value: `${read.value}${sign}` };
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
    if (cell.length > longest) continue;
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
