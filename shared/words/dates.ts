import { remembered } from "./remembered.ts";

/** The month that EDTF has spring in the place of; the other seasons follow it. */
const firstSeason = 21;

/** A word before a date that may change how it is said. */
export type Before = "about" | "since" | "until";

/** What a single date names. */
type Span = "day" | "month" | "season" | "year" | "decade";

export interface DateWords {
  readonly about: (date: string, before: Before | undefined) => string;
  readonly uncertain: (date: string) => string;
  readonly span: (from: string, to: string) => string;
  /** A single date in a sentence, after the word that its kind has before it; a decade as after "since". */
  readonly at: (date: string, of: Span, isAbout: boolean) => string;
  /** A span in a sentence. */
  readonly during: (span: string) => string;
  /** Going on, as `..` says; where the end is left empty it has one, which is not known. */
  readonly since: (from: string, isEndUnknown: boolean) => string;
  readonly until: (to: string, isStartUnknown: boolean) => string;
  /** The ten years from one that ends in nought, by that year. */
  readonly decade: (year: string, before: Before | undefined) => string;
  /** Spring, summer, autumn and winter. */
  readonly seasons: readonly [string, string, string, string];
  /** One event in some year before or after one, at some time until or from a date as in a sentence, or between two. */
  readonly before: (year: string) => string;
  readonly after: (year: string) => string;
  readonly atLatest: (date: string) => string;
  readonly atEarliest: (date: string) => string;
  readonly between: (from: string, to: string) => string;
}

/** A year of three digits or fewer, which words would make one of our own century, or nobody would take for a year. */
const isEarly = (year: string): boolean => year.startsWith("0");

const isYear = /^\d{4}~?$/;
const yearBeside = (year: string, by: number): string =>
  year.replace(/\d{4}/, (digits) => String(Number(digits) + by).padStart(4, "0"));

interface DateReader {
  readonly date: (edtf: string) => string;
  /** In a sentence, of one event: "on 5 June 2021". */
  readonly when: (edtf: string) => string;
}

/**
 * EDTF as a reader expects to see a date. What the pattern does not know is shown as it was written,
 * which is a standard notation and never wrong.
 */
export function dateReader(language: string, words: DateWords): DateReader {
  const formatter = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
  const day = formatter({ day: "numeric", month: "long", year: "numeric" });
  const month = formatter({ month: "long", year: "numeric" });

  const isAbout = (qualifier: string | undefined): boolean => qualifier === "~" || qualifier === "%";
  const doubted = (date: string, qualifier: string | undefined): string =>
    qualifier === "?" || qualifier === "%" ? words.uncertain(date) : date;
  const qualified = (date: string, qualifier: string | undefined, before?: Before): string =>
    doubted(isAbout(qualifier) ? words.about(date, before) : date, qualifier);

  const named = (text: string, before: Before | undefined) => {
    const match = /^(\d{4}|\d{3}X)(?:-(\d{2}))?(?:-(\d{2}))?([?~%])?$/.exec(text);
    if (!match) return null;
    const [, year = "", monthText, dayText, qualifier] = match;
    const isDecade = year.endsWith("X");
    const as = (of: Span, date: string) => ({ of, date, qualifier });
    if (monthText === undefined) {
      if (!isDecade) return as("year", year);
      const about = isAbout(qualifier) ? "about" : undefined;
      return as("decade", words.decade(year.replace("X", "0"), before ?? about));
    }
    if (isDecade || isEarly(year)) return null;
    const season = dayText === undefined ? words.seasons[Number(monthText) - firstSeason] : undefined;
    if (season !== undefined) return as("season", `${season} ${year}`);
    if (Number(monthText) < 1 || Number(monthText) > 12) return null;
    const at = new Date(Date.UTC(Number(year), Number(monthText) - 1, Number(dayText ?? 1)));
    return dayText === undefined ? as("month", month.format(at)) : as("day", day.format(at));
  };

  const single = (text: string, before?: Before): string => {
    const known = named(text, before);
    return known ? qualified(known.date, known.qualifier, before) : text;
  };

  const singleAt = (text: string): string => {
    const known = named(text, "since");
    if (!known) return words.at(text, "year", false);
    return doubted(words.at(known.date, known.of, isAbout(known.qualifier)), known.qualifier);
  };

  /** Two days or two months, with what they share said once: "14 to 16 March 2026". */
  const shared = (from: string, to: string): string | null => {
    const ends = [from, to].map((text) => /^(\d{4})-(0[1-9]|1[0-2])(-\d{2})?$/.exec(text));
    const [first, last] = ends;
    if (!first || !last || (first[3] === undefined) !== (last[3] === undefined)) return null;
    if (isEarly(from) || isEarly(to)) return null;
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
      return isYear.test(to)
        ? words.before(single(yearBeside(to, 1), "since"))
        : words.atLatest(singleAt(to));
    return isYear.test(from)
      ? words.after(single(yearBeside(from, -1), "since"))
      : words.atEarliest(singleAt(from));
  };

  const oneOf = (edtf: string): string | null => {
    const [, from, to] = /^\[([^,]*?)\.\.([^,]*)\]$/.exec(edtf) ?? [];
    if (from === undefined || to === undefined) return null;
    const certain = (date: string) => date.replace("?", "").replace("%", "~");
    const said = within(certain(from), certain(to));
    return /[?%]/.test(edtf) ? words.uncertain(said) : said;
  };

  /** A century has its first and its last year told: "the 1900s" would be ten years as well. */
  const century = (edtf: string, said: DateWords["span"], before?: Before): string | null => {
    const [, hundred, qualifier] = /^(\d{2})XX([?~%])?$/.exec(edtf) ?? [];
    return hundred === undefined ? null : qualified(said(`${hundred}00`, `${hundred}99`), qualifier, before);
  };

  /** With a word of its own before it, where an end is open or not known. */
  const openEnded = (from: string, to: string): string | null => {
    if (to === ".." || to === "") return words.since(single(from, "since"), to === "");
    return from === ".." || from === "" ? words.until(single(to, "until"), from === "") : null;
  };

  const ends = (edtf: string): readonly [string, string] | null => {
    const slash = edtf.indexOf("/");
    return slash < 0 ? null : [edtf.slice(0, slash), edtf.slice(slash + 1)];
  };
  const fromTo = (from: string, to: string, [first, last]: readonly Before[] = []): string =>
    shared(from, to) ?? words.span(single(from, first), single(to, last));

  return {
    date: remembered((edtf: string) => {
      const span = ends(edtf);
      if (span) return openEnded(...span) ?? fromTo(...span);
      return century(edtf, words.span) ?? oneOf(edtf) ?? single(edtf);
    }),
    when: remembered((edtf: string) => {
      const span = ends(edtf);
      if (span) return openEnded(...span) ?? words.during(fromTo(...span, ["since", "until"]));
      return century(edtf, words.between, "since") ?? oneOf(edtf) ?? singleAt(edtf);
    }),
  };
}
