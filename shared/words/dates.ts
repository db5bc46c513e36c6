import { remembered } from "./remembered.ts";

/**
 * EDTF as a reader expects to see a date. What the pattern does not know is shown as it was written,
 * which is a standard notation and never wrong.
 */
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
}

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
      const at = new Date(Date.UTC(Number(year), Number(monthText) - 1, Number(dayText ?? 1)));
      if (Number(monthText) < 1 || Number(monthText) > 12) return text;
      date = (dayText === undefined ? month : day).format(at);
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

  return remembered((edtf: string) => {
    const [, hundred, qualifier] = /^(\d{2})XX([?~%])?$/.exec(edtf) ?? [];
    // A century has its first and its last year told: "the 1900s" would be ten years as well.
    if (hundred !== undefined) return qualified(words.span(`${hundred}00`, `${hundred}99`), qualifier);
    const slash = edtf.indexOf("/");
    if (slash < 0) return single(edtf);
    const [from, to] = [edtf.slice(0, slash), edtf.slice(slash + 1)];
    if (to === ".." || to === "") return words.since(single(from, "since"), to === "");
    if (from === ".." || from === "") return words.until(single(to, "until"), from === "");
    return shared(from, to) ?? words.span(single(from), single(to));
  });
}
