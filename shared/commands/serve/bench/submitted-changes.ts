import { isDeepStrictEqual } from "node:util";
import type { Part } from "../../../records/variant.ts";
import type { BenchWords } from "../../../words/en/bench.ts";
import type { Change } from "./edited-yaml.ts";
import { lostFields } from "./lost-fields.ts";

type Line = Readonly<Record<string, unknown>>;

/** What the page asks of one line of a part, in the order in which the fields are written. */
export const lineFields = [
  "state",
  "model",
  "quantity",
  "rest",
  "serial",
  "marks",
  "condition",
  "evidence",
  "note",
] as const;
export type LineField = (typeof lineFields)[number];

const fieldOrder = [
  ...lineFields.slice(0, -2),
  "packed",
  "repairs",
  "belongs",
  "evidence",
  "note",
  "private",
];

/** The item's own fields that the page asks for, in the order in which they stand in a file. */
export const itemFields = ["serial", "set", "examined"] as const;
export const itemValue = (data: Line): unknown => itemFields.map((name) => data[name]);

/** The lines of a part as the record has them, a single word as a line of its own. */
export function linesOf(raw: unknown): Line[] {
  if (raw === undefined || raw === null) return [];
  return (Array.isArray(raw) ? raw : [raw]).map((each) =>
    typeof each === "object" && each !== null ? (each as Line) : { state: each },
  );
}

const shownWord = (value: unknown): string =>
  value === undefined || typeof value === "object" ? "" : String(value);

/** A value as it stands in a field of the page; a mapping stands in none. */
export const shownValue = (value: unknown): string =>
  Array.isArray(value) ? value.map(shownWord).join("; ") : shownWord(value);

/** A form that no script sends has other newlines than a record. */
const withOwnNewlines = (text: string): string => text.replace(/\r\n?/g, "\n");

function writtenValue(field: LineField, shown: string): unknown {
  const text = withOwnNewlines(shown).trim();
  if (text === "") return undefined;
  if (field === "quantity") return /^\d{1,5}$/.test(text) ? Number(text) : text;
  if (field === "marks")
    return text
      .split(";")
      .map((mark) => mark.trim())
      .filter((mark) => mark !== "");
  return text;
}

/** The line as it is typed, under the state that it had, with the record's own values wherever nothing was touched. */
function typedLine(line: Line, at: number, form: URLSearchParams): Line {
  const typed: Record<string, unknown> = { ...line };
  for (const field of lineFields) {
    const shown = form.get(`${at}.${field}`);
    if (field === "state" || shown === null) continue;
    if (withOwnNewlines(shown) === withOwnNewlines(shownValue(line[field]))) continue;
    const value = writtenValue(field, shown);
    if (value === undefined) delete typed[field];
    else typed[field] = value;
  }
  return typed;
}

/** What a part's form asks for, beside what the record says. */
export interface AskedPart {
  readonly before: readonly Line[];
  readonly after: readonly Line[];
  /** What becomes of each line in its place, and what is new behind them; null where it goes. */
  readonly each: readonly (Line | null)[];
  /** Each thing that would no longer be on record, in words. */
  readonly lost: readonly string[];
  /** True where something that is entered is not what will be on record. */
  readonly isLess: boolean;
}

export function askedPart(part: Part, raw: unknown, form: URLSearchParams, say: BenchWords): AskedPart {
  const before = linesOf(raw);
  const count = form.has(`${before.length}.state`) ? before.length + 1 : before.length;
  const each: (Line | null)[] = [];
  const lost: string[] = [];
  let isLess = false;
  for (let at = 0; at < count; at++) {
    const line = before[at] ?? {};
    const asked = form.get(`${at}.state`);
    if (asked === null) {
      each.push(line);
      continue;
    }
    const typed = typedLine(line, at, form);
    const gone = lostFields(typed, asked, part, say);
    isLess ||= gone.size > 0;
    if (at < before.length)
      for (const [field, why] of gone)
        if (line[field] !== undefined)
          lost.push(`${say.saved.field(field, shownValue(line[field]))}${why === "" ? "" : `, ${why}`}`);
    if (asked === "") {
      each.push(null);
      continue;
    }
    const kept = Object.entries({ ...typed, state: asked }).filter(([field]) => !gone.has(field));
    each.push(Object.fromEntries(kept.sort(([a], [b]) => fieldOrder.indexOf(a) - fieldOrder.indexOf(b))));
  }
  return { before, after: each.filter((line) => line !== null), each, lost, isLess };
}

/** One word where there is nothing more to say. */
const shortest = (line: Line): unknown => (Object.keys(line).length === 1 ? line.state : line);

/**
 * The changes that a part's form asks for, in ways to be tried one after another: only what differs, then the part as
 * a whole. None where the form says what the record says.
 */
export function partChanges(
  part: Part,
  raw: unknown,
  { before: lines, after: kept, each }: AskedPart,
  order: readonly string[],
): readonly (readonly Change[])[] {
  if (isDeepStrictEqual(kept, lines)) return [];
  const [first] = kept;
  const value = first === undefined ? undefined : kept.length === 1 ? shortest(first) : kept.map(shortest);
  const whole: Change[] = [{ path: ["parts", part.id], value, order }];
  const isList = Array.isArray(raw);
  if (kept.length === 0 || (!isList && each.length !== lines.length)) return [whole];
  const byLine = each.map((next, at): Change[] => {
    const line = lines[at];
    const path = isList ? ["parts", part.id, at] : ["parts", part.id];
    if (!line) return next ? [{ path, value: shortest(next) }] : [];
    if (!next) return [{ path, value: undefined }];
    const fields = [...new Set([...Object.keys(next), ...Object.keys(line)])].filter(
      (field) => !isDeepStrictEqual(next[field], line[field]),
    );
    if (fields.length === 0) return [];
    if (typeof (isList ? raw[at] : raw) !== "object") return [{ path, value: shortest(next), order }];
    return fields.map((field) => ({ path: [...path, field], value: next[field], order: fieldOrder }));
  });
  // From the last to the first, so that each is still in its place when its turn comes.
  return [byLine.reverse().flat(), whole];
}

/** The change that a form of one field asks for: a feature, or a field of the item itself. */
export function fieldChanges(
  path: readonly string[],
  raw: unknown,
  shown: string | null,
  order: readonly string[],
): readonly (readonly Change[])[] {
  if (shown === null || shown.trim() === shownValue(raw)) return [];
  return [[{ path, value: shown.trim() === "" ? undefined : shown.trim(), order }]];
}
