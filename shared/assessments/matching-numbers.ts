import type { PartLine } from "../records/item.ts";
import { foldSerial } from "../records/serial.ts";
import { isMarkOfSet, numbersOfSet } from "../records/set-marks.ts";
import type { Part } from "../records/variant.ts";
import { markOfSet, setPlace } from "../terms/set-place.ts";

/**
 * `matching`: every expected mark is there. `other-set`: a mark where the set's number should be is another's.
 * `partial`: some expected marks are there, or others than expected. `unread`: no mark was noted.
 */
export type MarkVerdict = "matching" | "other-set" | "partial" | "unread";

export interface MarkFinding {
  readonly expected: readonly string[];
  readonly found: readonly string[];
  readonly verdict: MarkVerdict;
  /** The set whose number the part bears, where that is another. */
  readonly otherSet: string | null;
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const folded = (mark: string) => mark.normalize("NFKC").replace(/\s+/g, " ").trim().toUpperCase();

/** Where the template has the set's number, a mark of the same form has the number of some set. */
function setNumberIn(template: string, set: string, mark: string): string | null {
  if (!template.includes(setPlace)) return null;
  const form = /^\d+$/.test(set) ? "\\d+" : "[\\p{L}\\p{N}-]+";
  const [before = "", ...after] = folded(template).split(folded(setPlace)).map(escaped);
  const pattern = new RegExp(`^${before}(${form})${after.join(`(?:${form})`)}$`, "u");
  return pattern.exec(folded(mark))?.[1] ?? null;
}

/** Marks observed against marks expected, `{set}` standing for the set's own number. */
export function assessMarks(
  parts: Iterable<Part>,
  item: { readonly set: string | undefined; readonly parts: ReadonlyMap<string, readonly PartLine[]> },
): ReadonlyMap<string, MarkFinding> {
  const findings = new Map<string, MarkFinding>();
  for (const part of parts) {
    const there = (item.parts.get(part.id) ?? []).filter(
      ({ state }) => state === "present" || state === "unverified",
    );
    if (part.marks.length === 0 || there.length === 0) continue;
    const { set } = item;
    const found = there.flatMap(({ marks }) => marks);
    const expected = part.marks.map((template) => (set === undefined ? template : markOfSet(template, set)));
    if (found.length === 0) {
      findings.set(part.id, { expected, found, verdict: "unread", otherSet: null });
      continue;
    }
    const isMark = (read: string, template: string) => isMarkOfSet(read, template, set ?? setPlace);
    const isThere = (template: string) => found.some((mark) => isMark(mark, template));
    const isExplained = (mark: string) => part.marks.some((template) => isMark(mark, template));
    const others =
      set === undefined
        ? []
        : found
            .filter((mark) => !isExplained(mark))
            .flatMap((mark) => part.marks.flatMap((template) => setNumberIn(template, set, mark) ?? []))
            .filter((number) => !numbersOfSet(set).some((own) => foldSerial(own) === foldSerial(number)));
    const otherSet = others[0] ?? null;
    const verdict: MarkVerdict =
      otherSet !== null ? "other-set" : part.marks.every(isThere) ? "matching" : "partial";
    findings.set(part.id, { expected, found, verdict, otherSet });
  }
  return findings;
}
