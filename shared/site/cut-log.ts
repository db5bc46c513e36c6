import { recordsIn } from "../source/read-records.ts";
import { type RecordText, recordText } from "../source/read-texts.ts";

/** A log, with the sightings of some families only. */
export type FamilyLog = (families: readonly string[]) => RecordText;

/**
 * A log by families; null where it is not sound. One log at a time: taken apart, its rows take many times the room of
 * its text.
 */
export function cutLog(
  log: RecordText,
  familyOf: ReadonlyMap<string, string>,
  see: (date: string) => void,
): FamilyLog | null {
  const read = recordsIn({ texts: [log], files: [log], beside: new Set(), diagnostics: [] });
  if (read.diagnostics.some(({ severity }) => severity === "error")) return null;
  const rows = new Map<string, string[]>();
  const entries = new Map<string, [string, unknown][]>();
  let header = "";
  for (const { table } of read.tables) {
    header = table.header;
    for (const row of table.rows) {
      const family = familyOf.get(row.cell("variant"));
      if (family === undefined) return null;
      see(row.cell("seen"));
      addUnder(rows, family, row.line);
    }
  }
  for (const { document } of read.records) {
    for (const [key, entry] of Object.entries((document.data ?? {}) as Record<string, unknown>)) {
      const { variant, seen } = (entry ?? {}) as { variant?: unknown; seen?: unknown };
      const family = typeof variant === "string" ? familyOf.get(variant) : undefined;
      if (family === undefined) return null;
      if (typeof seen !== "object") see(String(seen));
      addUnder(entries, family, [key, entry]);
    }
  }
  const { text: _, hash: __, ...file } = log;
  // What the function below takes from here it keeps in memory: never the rows as they were taken apart.
  const isTable = read.tables.length > 0;
  return (families) => {
    const of = <Each>(kept: ReadonlyMap<string, Each[]>) =>
      families.flatMap((family) => kept.get(family) ?? []);
    // JSON is YAML, too.
    const text = isTable ? [header, ...of(rows)].join("\n") : JSON.stringify(Object.fromEntries(of(entries)));
    return recordText(file, text);
  };
}

/** Adds to the list of a key, which begins with the first. */
export function addUnder<Value>(lists: Map<string, Value[]>, key: string, value: Value): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}
