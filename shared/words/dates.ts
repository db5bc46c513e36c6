import { remembered } from "./remembered.ts";

/** The month that EDTF has spring in the place of; the other seasons follow it. */
const firstSeason = 21;

/** A word before a date that may change how it is said. */
export type Before = "about" | "since" | "until";

export interface DateWords {
  readonly about: (date: string, before: Before | undefined) => string;
  readonly uncertain: (date: string) => string;
  readonly span: (from: string, to: string) => string;
  /** Going on, as `..` says; where the end is left empty it has one, which is not known. */
  readonly since: (from: string, isEndUnknown: boolean) => string;
  readonly until: (to: string, isStartUnknown: boolean) => string;
  /** The ten years from one that ends in nought, by that year. */
  readonly decade: (year: string, before: Before | undefined) => string;
  /** Spring, summer, autumn and winter. */
  readonly seasons: readonly [string, string, string, string];
  /** One event in some year before or after one, at some time until or from a date, or between two. */
  readonly before: (year: string) => string;
  readonly after: (year: string) => string;
  readonly atLatest: (date: string) => string;
  readonly atEarliest: (date: string) => string;
  readonly between: (from: string, to: string) => string;
}

const isYear = /^\d{4}~?$/;
const yearBeside = (year: string, by: number): string =>
  year.replace(/\d{4}/, (digits) => String(Number(digits) + by).padStart(4, "0"));

/**
 * EDTF as a reader expects to see a date. What the pattern does not know is shown as it was written,
 * which is a standard notation and never wrong.
 */
export function dateReader(language: string, words: DateWords): (edtf: string) => string {
  const formatter = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
  const day = formatter({ day: "numeric", month: "long", year: "numeric" });
  const month = formatter({ month: "long", year: "numeric" });

  const isAbout = (qualifier: string | undefined): boolean => qualifier === "~" || qualifier === "%";
  const qualified = (date: string, qualifier: string | undefined, before?: Before): string => {
    const about = isAbout(qualifier) ? words.about(date, before) : date;
    return qualifier === "?" || qualifier === "%" ? words.uncertain(about) : about;
  };

  const single = (text: string, before?: Before): string => {
    const match = /^(\d{4}|\d{3}X)(?:-(\d{2}))?(?:-(\d{2}))?([?~%])?$/.exec(text);
    if (!match) return text;
    const [, year = "", monthText, dayText, qualifier] = match;
    const isDecade = year.endsWith("X");
    if (isDecade && monthText !== undefined) return text;
    let date = isDecade
      ? words.decade(year.replace("X", "0"), before ?? (isAbout(qualifier) ? "about" : undefined))
      : year;
    if (monthText !== undefined) {
      const season = dayText === undefined ? words.seasons[Number(monthText) - firstSeason] : undefined;
      if (season === undefined && (Number(monthText) < 1 || Number(monthText) > 12)) return text;
      const at = new Date(Date.UTC(Number(year), Number(monthText) - 1, Number(dayText ?? 1)));
      date = season === undefined ? (dayText === undefined ? month : day).format(at) : `${season} ${year}`;
    }
    return qualified(date, qualifier, before);
  };

  /** Two days or two months, with what they share said once: "14 to 16 March 2026". */
  const shared = (from: string, to: string): string | null => {
    const ends = [from, to].map((text) => /^(\d{4})-(0[1-9]|1[0-2])(-\d{2})?$/.exec(text));
    const [first, last] = ends;
    if (!first || !last || (first[3] === undefined) !== (last[3] === undefined)) return null;
    const [start, end] = [from, to].map((text) => Date.parse(text));
    if (start === undefined || end === undefined || !(start < end)) return null;
    const parts = (first[3] === undefined ? month : day).formatRangeToParts(start, end);
    const turn = parts.findIndex(
      ({ source }, at) => source === "shared" && parts[at - 1]?.source === "startRange",
    );
    if (turn < 0) return null;
    const text = (some: typeof parts) => some.map(({ value }) => value).join("");
    // Some languages put a point to the number before the dash.
    const point = parts[turn]?.value.split(/[\s\u2009]*[–-]/u)[0] ?? "";
    return words.span(text(parts.slice(0, turn)) + point, text(parts.slice(turn + 1)));
  };

  /** One event until a date, from one on, or between two: of a year, before the next one or after the last. */
  const within = (from: string, to: string): string => {
    if (from !== "" && to !== "") return words.between(single(from, "since"), single(to, "since"));
    if (from === "")
      return isYear.test(to) ? words.before(single(yearBeside(to, 1), "since")) : words.atLatest(single(to));
    return isYear.test(from)
      ? words.after(single(yearBeside(from, -1), "since"))
      : words.atEarliest(single(from));
  };

  const oneOf = (edtf: string): string | null => {
    const [, from, to] = /^\[([^,]*?)\.\.([^,]*)\]$/.exec(edtf) ?? [];
    if (from === undefined || to === undefined) return null;
    const certain = (date: string) => date.replace("?", "").replace("%", "~");
    const said = within(certain(from), certain(to));
    return /[?%]/.test(edtf) ? words.uncertain(said) : said;
  };

  return remembered((edtf: string) => {
    const [, hundred, qualifier] = /^(\d{2})XX([?~%])?$/.exec(edtf) ?? [];
    // A century has its first and its last year told: "the 1900s" would be ten years as well.
    if (hundred !== undefined) return qualified(words.span(`${hundred}00`, `${hundred}99`), qualifier);
    const slash = edtf.indexOf("/");
    if (slash < 0) return oneOf(edtf) ?? single(edtf);
    const [from, to] = [edtf.slice(0, slash), edtf.slice(slash + 1)];
    if (to === ".." || to === "") return words.since(single(from, "since"), to === "");
    if (from === ".." || from === "") return words.until(single(to, "until"), from === "");
    return shared(from, to) ?? words.span(single(from), single(to));
  });
}
