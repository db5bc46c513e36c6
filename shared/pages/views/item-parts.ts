import { grouping } from "../../lists/grouping.ts";
import { unitsByState } from "../../plots/case-plan/case-plan-part.ts";
import type {
  PublishedFigure,
  PublishedItem,
  PublishedItemPart,
  PublishedPartLine,
} from "../../publication/published.ts";
import { setPlace } from "../../terms/set-place.ts";
import { unitsOfLine } from "../../terms/units-of-line.ts";
import { remarksInARow } from "../../words/ended.ts";
import type { Words } from "../../words/words.ts";
import type { Link } from "../page.ts";
import type { Named } from "../search/search-index.ts";
import { datedUnits } from "./dated-units.ts";
import { namedHazards } from "./hazard-view.ts";

/** One row of the list of parts, as it is printed. */
export interface PartRow {
  readonly id: string;
  readonly name: string;
  readonly summary: PublishedItemPart["summary"];
  readonly state: string;
  /** Empty where it is simply issued, as most parts are. */
  readonly standing: string;
  readonly units: string;
  readonly marks: readonly string[];
  /** Empty where there is none. */
  readonly remarks: string;
  readonly rate: RateView;
  /** The photographs in which it is pointed out, and the moments of the recording at which it is shown. */
  readonly seen: readonly Link[];
  readonly moments: readonly MomentLink[];
  readonly hazards: readonly Named[];
}

export interface MomentLink extends Link {
  readonly seconds: number;
}

export interface RateView {
  /** "64%"; null where nothing is recorded. */
  readonly share: string | null;
  readonly interval: string | null;
  readonly count: string | null;
}

export interface PartGroup {
  readonly name: string | null;
  readonly rows: readonly PartRow[];
}

export function rateView(rate: PublishedFigure, words: Words): RateView {
  const { having, recorded } = rate.inputs;
  const { share, count } = words.numbers;
  if (rate.value === null || rate.low === null || rate.high === null) {
    return { share: null, interval: null, count: null };
  }
  return {
    share: share(rate.value),
    interval: words.interval(share(rate.low), share(rate.high)),
    count:
      typeof having === "number" && typeof recorded === "number"
        ? words.pages.item.ofRecorded(count(having), count(recorded))
        : null,
  };
}

/** In the order of the reference, under the names of the groups. */
export function groupParts<Part extends { readonly groupName: string | null }>(
  parts: readonly Part[],
): { readonly name: string | null; readonly parts: readonly Part[] }[] {
  const groups = grouping(parts, ({ groupName }) => groupName);
  return [...groups].map(([name, members]) => ({ name, parts: members }));
}

export const partGroups = (
  { parts, hazards }: Pick<PublishedItem, "parts" | "hazards">,
  words: Words,
  seen: ReadonlyMap<string, readonly Link[]> = new Map(),
  moments: ReadonlyMap<string, readonly MomentLink[]> = new Map(),
): PartGroup[] =>
  groupParts(parts).map(({ name, parts: members }) => ({
    name,
    rows: members.map((part) => ({
      ...partRow(part, words),
      // The page has no caution for what is not in the case.
      hazards:
        part.summary === "absent" || (part.summary === "not-issued" && part.units.surplus === 0)
          ? []
          : namedHazards(part.hazards, hazards),
      seen: seen.get(part.id) ?? [],
      moments: moments.get(part.id) ?? [],
    })),
  }));

export const plain = (id: string): string => id.replaceAll("-", " ");

/** What of a part its words are made from: the data files hold as much. */
export type PartState = Pick<
  PublishedItemPart,
  "summary" | "units" | "share" | "quantity" | "marks" | "lines" | "matching" | "dating" | "assembled"
>;

function partRow(part: PublishedItemPart, words: Words): Omit<PartRow, "seen" | "moments" | "hazards"> {
  return {
    id: part.id,
    name: part.name,
    summary: part.summary,
    standing: part.standing === "issued" ? "" : words.pages.standings[part.standing],
    ...partInWords(part, words),
    remarks: remarksInARow(remarksInWords(part, words)),
    rate: rateView(part.rate, words),
  };
}

/** What was found of a part. */
export function partInWords(part: PartState, words: Words): Pick<PartRow, "state" | "units" | "marks"> {
  const { units } = part;
  const say = words.pages.item;
  const bears = part.lines.flatMap(({ marks, serial }) => [
    ...(serial === null ? [] : [say.serialIs(serial)]),
    ...marks,
  ]);
  const expected = part.marks.filter((mark) => !mark.includes(setPlace));
  return {
    state: stateInWords(part, words),
    units: unitsOf(part, words),
    marks: [
      ...new Set(bears),
      ...(bears.length === 0 && expected.length > 0 && units.present + units.unverified > 0
        ? [say.expectedMarks(expected.join(", "))]
        : []),
    ],
  };
}

/**
 * How much of it is there, out of what was issued to this example, as completeness counts it: a substitute as far as
 * the reference accepts it, and what is unknown as there or not. The column adds up to the figure by count.
 */
function unitsOf({ units, share }: PartState, { pages, numbers, interval }: Words): string {
  if (share === null) return "—";
  const [low, high] = [share.low, share.high].map((end) => numbers.quantity(end * units.expected));
  const there = interval(low ?? "", high ?? "");
  return units.expected === 1 ? there : pages.item.unitsOf(there, numbers.count(units.expected));
}

/** In words: one state, or how many units are in each. */
export function stateInWords({ summary, units }: PartState, words: Words): string {
  const { states, item } = words.pages;
  const found = unitsByState(units);
  if (found.length <= 1) return states[found[0]?.state ?? summary];
  return found.map(({ state, units: each }) => item.stateUnits(each, stateOf(state, each, words))).join(", ");
}

/** The state of so many units: "one substitute", "two substitutes". */
export function stateOf(state: PartState["summary"], units: number, { pages }: Words): string {
  const ofSeveral: Partial<Record<PartState["summary"], string>> = pages.statesOfSeveral;
  return (units > 1 ? ofSeveral[state] : undefined) ?? pages.states[state];
}

/** What else is recorded of a part. */
export function remarksInWords(part: PartState, words: Words): string[] {
  const say = words.pages.item;
  const states = new Set(part.lines.map(({ state }) => state));
  const counted = new Map<string, { readonly line: PublishedPartLine; units: number }>();
  for (const line of part.lines) {
    const key = [states.size > 1 ? line.state : "", ...lineRemarks(line, words), line.note ?? ""].join("\n");
    const known = counted.get(key);
    const units = unitsOfLine(line, part.lines, part);
    counted.set(key, { line, units: (known?.units ?? 0) + units });
  }
  const lines = [...counted.values()].flatMap(({ line, units }) => {
    const { state, note } = line;
    const text = [
      ...(states.size > 1 ? [stateOf(state, units, words)] : []),
      ...lineRemarks(line, words),
    ].join(", ");
    const said = text !== "" && part.lines.length > 1 ? say.several(units, text) : text;
    return [said, note ?? ""];
  });
  const { matching } = part;
  const numbers = matching === null ? [] : [say.matching[matching.verdict](matching.otherSet ?? "")];
  const dated = datedUnits(part, words)
    .filter(({ verdict }) => verdict !== "fits")
    .map(({ some, made, verdict }) => {
      const told = [made === null ? null : say.made(words.date(made)), say.datingVerdicts[verdict]];
      return `${some === null ? "" : `${some}: `}${told.filter((text) => text !== null).join(", ")}`;
    });
  return [...lines, ...numbers, ...dated, ...(part.assembled ? [say.fromElsewhere] : [])]
    .filter((text) => text !== "")
    .map(words.pages.capital);
}

function lineRemarks(line: PublishedPartLine, { pages }: Words): string[] {
  const say = pages.item;
  return [
    line.condition,
    line.packed === null ? null : say.packed(line.packed),
    line.model === null ? null : say.model(plain(line.model)),
    line.repairs.length === 0 ? null : say.repairs(line.repairs.join(", ")),
    line.belongs === "spare" ? say.belongsSpare : null,
    line.evidence === null ? null : say.evidence(line.evidence),
  ].filter((text): text is string => text !== null);
}
