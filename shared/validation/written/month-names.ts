const languages = ["en", "de", "fr", "es", "it", "nl", "pt", "sv", "da", "nb", "fi", "pl", "cs"];

const folded = (name: string) =>
  name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\.$/, "");

/** Months by their names, whole and shortened, in the languages that spreadsheets come in. */
function monthNames(): ReadonlyMap<string, number> {
  const months = new Map<string, number>([["sept", 9]]);
  const disputed = new Set<string>();
  for (const language of languages) {
    for (const width of ["long", "short"] as const) {
      for (const shape of [{ month: width }, { month: width, day: "numeric" }] as const) {
        const formatter = new Intl.DateTimeFormat(language, { ...shape, timeZone: "UTC" });
        for (let month = 1; month <= 12; month++) {
          const parts = formatter.formatToParts(Date.UTC(2001, month - 1, 1));
          const name = folded(parts.find(({ type }) => type === "month")?.value ?? "");
          if (!/^\p{L}{3,}$/u.test(name)) continue;
          if ((months.get(name) ?? month) !== month) disputed.add(name);
          months.set(name, month);
        }
      }
    }
  }
  // A name that means different months in two languages tells nothing.
  for (const name of disputed) months.delete(name);
  return months;
}

let names: ReadonlyMap<string, number> | undefined;

export function monthFrom(name: string): number | undefined {
  names ??= monthNames();
  return names.get(folded(name));
}
