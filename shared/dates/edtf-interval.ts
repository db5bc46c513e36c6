import { dateAndTimeBounds, dateBounds } from "./date-bounds.ts";
import type { DayNumber } from "./day-number.ts";
import { type SetMember, setMembers } from "./set-members.ts";

/** A day; -Infinity or Infinity where an end is open (`..`); null where an end is not known (empty). */
export type DayBound = DayNumber | null;

/**
 * An EDTF date as the days that it may begin and end on. What is given as one date, or as a choice between
 * several, is one event somewhere between `earliest` and `latest`; an interval or an inclusive list begins
 * and ends apart, each with bounds of its own.
 */
export interface EdtfDate {
  readonly text: string;
  /** The earliest day on which it may begin. */
  readonly earliest: DayBound;
  /** The latest day on which it may begin. */
  readonly latestStart: DayBound;
  /** The earliest day on which it may end. */
  readonly earliestEnd: DayBound;
  /** The latest day on which it may end. */
  readonly latest: DayBound;
  readonly uncertain: boolean;
  readonly approximate: boolean;
}

const cache = new Map<string, EdtfDate | null>();

/**
 * Reads a date in the Extended Date/Time Format, levels 0 to 2; null where it is none.
 *
 * Refused, beside what the format does not know: a day that does not exist; an interval that ends before it
 * can have begun, or of which neither end is a date; a time of day in an interval; spaces. Centuries and
 * decades of two and three digits (`19`, `193`) are ISO 8601-2, but not of the Library's profile, which
 * writes `19XX` and `193X`.
 *
 * Source  Library of Congress, EDTF (4 February 2019); ISO 8601-2:2019
 */
export function parseEdtf(text: string): EdtfDate | null {
  const known = cache.get(text);
  if (known !== undefined) return known;
  const bounds = boundsOf(text);
  const date = bounds && Object.freeze({ text, ...bounds });
  cache.set(text, date);
  return date;
}

type Bounds = Omit<EdtfDate, "text">;

function boundsOf(text: string): Bounds | null {
  if (text.includes("/")) return intervalBounds(text.split("/"));
  if (text.startsWith("[") && text.endsWith("]")) return setBounds("one", text.slice(1, -1));
  if (text.startsWith("{") && text.endsWith("}")) return setBounds("all", text.slice(1, -1));
  const date = dateBounds(text) ?? dateAndTimeBounds(text);
  return date && oneEvent(date);
}

/** One event somewhere in a span: it begins when it ends. */
function oneEvent({ earliest, latest, uncertain, approximate }: SetMember): Bounds {
  return { earliest, latestStart: latest, earliestEnd: earliest, latest, uncertain, approximate };
}

interface End {
  readonly earliest: DayBound;
  readonly latest: DayBound;
  readonly uncertain: boolean;
  readonly approximate: boolean;
}

function intervalBounds(ends: readonly string[]): Bounds | null {
  const [first = "", last = ""] = ends;
  const start = endBounds(first, -Infinity);
  const end = endBounds(last, Infinity);
  if (ends.length !== 2 || start === null || end === null) return null;
  if (!Number.isFinite(start.earliest) && !Number.isFinite(end.latest)) return null;
  if (start.earliest !== null && end.latest !== null && start.earliest > end.latest) return null;
  return {
    earliest: start.earliest,
    // It cannot begin after the end that it has, nor end before its beginning.
    latestStart: within(Math.min, start.latest, end.latest),
    earliestEnd: within(Math.max, end.earliest, start.earliest),
    latest: end.latest,
    uncertain: start.uncertain || end.uncertain,
    approximate: start.approximate || end.approximate,
  };
}

function within(pick: (a: number, b: number) => number, own: DayBound, other: DayBound): DayBound {
  return own === null || other === null ? own : pick(own, other);
}

function endBounds(text: string, open: number): End | null {
  if (text === "") return { earliest: null, latest: null, uncertain: false, approximate: false };
  if (text === "..") return { earliest: open, latest: open, uncertain: false, approximate: false };
  return dateBounds(text);
}

/** One of a set is one event; all members of a set begin with the first of them and end with the last. */
function setBounds(kind: "one" | "all", content: string): Bounds | null {
  const members = setMembers(content);
  if (members === null) return null;
  const span = {
    earliest: Math.min(...members.map((member) => member.earliest)),
    latest: Math.max(...members.map((member) => member.latest)),
    uncertain: members.some((member) => member.uncertain),
    approximate: members.some((member) => member.approximate),
  };
  if (kind === "one") return oneEvent(span);
  return {
    ...span,
    latestStart: Math.min(...members.map((member) => member.latest)),
    earliestEnd: Math.max(...members.map((member) => member.earliest)),
  };
}
