import { isError } from "../../diagnostics/diagnostic.ts";
import { addUnder } from "../../lists/grouping.ts";
import { recordsIn } from "../../source/read-records.ts";
import { type RecordText, recordText } from "../../source/read-texts.ts";

/** A log by families. Plain data, which can be kept. */
export interface CutLog {
  /** Of a table; null where the log is no table. */
  readonly header: string | null;
  /** By family, its rows as they are written; of what is no table its entries as JSON, which is YAML, too. */
  readonly shares: readonly (readonly [family: string, text: string])[];
  /** By family, what its rows say in words, in which a serial may be told. */
  readonly words: readonly (readonly [family: string, text: string])[];
  /** By kind of sighting, the dates on which there were some, each once. */
  readonly dates: readonly (readonly [kind: string, dates: readonly string[]])[];
}

export type LogCutter = (log: RecordText, familyOf: ReadonlyMap<string, string>) => CutLog | null;

/** What of a sighting is published without the serials that it tells. */
const inWords = ["condition", "note"] as const;

/** Null where the log is not sound. One at a time: taken apart, its rows take many times the room of its text. */
export const cutLog: LogCutter = (log, familyOf) => {
  const read = recordsIn({ texts: [log], files: [log], beside: new Set(), diagnostics: [] });
  const told = [...read.diagnostics, ...read.tables.flatMap(({ table }) => table.diagnostics)];
  if (told.some(isError)) return null;
  const shares = new Map<string, string[]>();
  const words = new Map<string, string[]>();
  const dates = new Map<string, Set<string>>();
  const see = (kind: string, date: string) => {
    const known = dates.get(kind);
    if (known) known.add(date);
    else dates.set(kind, new Set([date]));
  };
  let header: string | null = null;
  for (const { table } of read.tables) {
    header = table.header;
    for (const row of table.rows) {
      const family = familyOf.get(row.cell("variant"));
      if (family === undefined) return null;
      see(row.cell("kind"), row.cell("seen"));
      addUnder(shares, family, row.line);
      for (const column of inWords) {
        const cell = row.cell(column);
        if (cell !== "") addUnder(words, family, cell);
      }
    }
  }
  for (const { document } of read.records) {
    for (const [key, entry] of Object.entries((document.data ?? {}) as Record<string, unknown>)) {
      const { variant, kind, seen } = (entry ?? {}) as { variant?: unknown; kind?: unknown; seen?: unknown };
      const family = typeof variant === "string" ? familyOf.get(variant) : undefined;
      if (family === undefined) return null;
      if (typeof seen !== "object") see(String(kind), String(seen));
      addUnder(shares, family, `${JSON.stringify(key)}:${JSON.stringify(entry)}`);
      for (const column of inWords) {
        const text = (entry as Record<string, unknown> | null)?.[column];
        if (typeof text === "string") addUnder(words, family, text);
      }
    }
  }
  const between = header === null ? "," : "\n";
  return {
    header,
    shares: [...shares].map(([family, rows]) => [family, rows.join(between)]),
    words: [...words].map(([family, texts]) => [family, texts.join("\n")]),
    dates: [...dates].map(([kind, each]) => [kind, [...each]]),
  };
};

/** A log, with the sightings of some families only. */
export function shareOf(
  { text: _, hash: __, ...file }: RecordText,
  { header, shares }: CutLog,
  families: readonly string[],
): RecordText {
  const wanted = new Map(shares);
  const own = families.flatMap((family) => wanted.get(family) ?? []);
  return recordText(file, header === null ? `{${own.join(",")}}` : [header, ...own].join("\n"));
}
