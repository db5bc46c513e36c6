/**
 * EDTF as a reader expects to see a date. What the pattern does not know is shown as it was written,
 * which is a standard notation and never wrong.
 */
export interface DateWords {
  readonly about: (date: string) => string;
  readonly uncertain: (date: string) => string;
  readonly span: (from: string, to: string) => string;
  readonly since: (from: string) => string;
  readonly until: (to: string) => string;
  readonly unknown: string;
}

export function dateReader(language: string, words: DateWords): (edtf: string) => string {
  const formatter = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
  const day = formatter({ day: "numeric", month: "long", year: "numeric" });
  const month = formatter({ month: "long", year: "numeric" });

  const single = (text: string): string => {
    const match = /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?([?~%])?$/.exec(text);
    if (!match) return text;
    const [, year, monthText, dayText, qualifier] = match;
    let date = year ?? text;
    if (monthText !== undefined) {
      const at = new Date(Date.UTC(Number(year), Number(monthText) - 1, Number(dayText ?? 1)));
      if (Number(monthText) < 1 || Number(monthText) > 12) return text;
      date = (dayText === undefined ? month : day).format(at);
    }
    if (qualifier === "~") return words.about(date);
    if (qualifier === "?") return words.uncertain(date);
    if (qualifier === "%") return words.uncertain(words.about(date));
    return date;
  };

  return (edtf) => {
    const decade = /^(\d{3})X$/.exec(edtf);
    if (decade) return `${decade[1]}0s`;
    const slash = edtf.indexOf("/");
    if (slash < 0) return single(edtf);
    const [from, to] = [edtf.slice(0, slash), edtf.slice(slash + 1)];
    if (to === ".." || to === "") return words.since(single(from));
    if (from === ".." || from === "") return words.until(single(to));
    return words.span(single(from), single(to));
  };
}
