import type { Extra, PartLine } from "../records/item.ts";
import { neededBy } from "../records/needed-parts.ts";
import { bestCredit, type Level, type Part } from "../records/variant.ts";
import { isMain, type Standing, standings } from "../terms/states.ts";
import { unitsOfLine } from "../terms/units-of-line.ts";

export interface Bounds {
  readonly low: number;
  readonly high: number;
}

export interface CountedBounds extends Bounds {
  readonly expected: number;
}

/** What is known of one part of one example, in units. */
export interface PartFinding {
  readonly part: string;
  /** Units that belong to this example: those issued, less those that it never had. */
  readonly expected: number;
  readonly present: number;
  readonly substitute: number;
  /** What each of the substitutes that has a place counts for, in units, the best first. */
  readonly credits: readonly number[];
  readonly unverified: number;
  /** No more than there is an empty place for: what is there in the place of one that is gone stands there. */
  readonly absent: number;
  readonly unexamined: number;
  readonly notIssued: number;
  readonly surplus: number;
  /** The certain and the possible share of the expected units; null where none is expected. */
  readonly share: Bounds | null;
}

export interface StandingCompleteness {
  readonly weighted: Bounds;
  readonly counted: CountedBounds;
}

export interface Completeness {
  readonly parts: ReadonlyMap<string, PartFinding>;
  /** Over core and issued parts; null where the reference lists none, or this example was issued none. */
  readonly main: StandingCompleteness | null;
  readonly consumable: StandingCompleteness | null;
  readonly optional: StandingCompleteness | null;
  readonly level: { readonly sure: string | null; readonly possible: string | null };
  readonly missing: readonly string[];
  readonly partial: readonly string[];
  readonly substitutes: readonly string[];
  readonly unverified: readonly string[];
  readonly unexamined: readonly string[];
  readonly surplus: readonly string[];
  readonly extras: readonly Extra[];
}

/** Whether anybody has looked for any part that the main completeness counts. */
export const isAnyExamined = ({ parts: findings }: Completeness, parts: Reference["parts"]): boolean =>
  [...findings.values()].some(
    ({ part, unexamined, expected }) =>
      unexamined < expected && isMain(parts.get(part)?.standing ?? "optional"),
  );

const found = new WeakMap<Part, Map<PartLine | "nothing", PartFinding>>();

/** Of a part of which nothing was written, or one word, the finding is the same in every example. */
function findingOf(part: Part, lines: readonly PartLine[]): PartFinding {
  const [line = "nothing", ...others] = lines;
  if (others.length > 0 || (line !== "nothing" && !Object.isFrozen(line))) return findPart(part, lines);
  const known = found.get(part) ?? new Map<PartLine | "nothing", PartFinding>();
  found.set(part, known);
  const before = known.get(line);
  if (before) return before;
  const finding = findPart(part, lines);
  known.set(line, finding);
  return finding;
}

/**
 * What the lines written for a part say of its units. What no line speaks for is unexamined: neither counted
 * nor struck out (worst-case bounds under missing data: Manski 1989, J. Human Resources 24: 343-360).
 */
export function findPart(part: Part, lines: readonly PartLine[]): PartFinding {
  const units = { present: 0, absent: 0, substitute: 0, unverified: 0, "not-issued": 0 };
  /** What each substitute certainly counts for, and what it may, where nobody said the model. */
  const standIns: { readonly credit: number; readonly atBest: number }[] = [];
  let spokenFor = 0;
  const count = (line: PartLine, state: PartLine["state"], quantity: number) => {
    units[state] += quantity;
    spokenFor += quantity;
    if (state !== "substitute") return;
    const credit = line.model === undefined ? 0 : (part.accepts.get(line.model) ?? 0);
    const atBest = line.model === undefined ? bestCredit(part) : credit;
    for (let unit = 0; unit < quantity; unit++) standIns.push({ credit, atBest });
  };
  for (const line of lines) count(line, line.state, unitsOfLine(line, lines, part));
  const remaining = lines.find((line) => line.rest !== undefined);
  if (remaining?.rest && spokenFor < part.quantity)
    count(remaining, remaining.rest, part.quantity - spokenFor);

  const expected = Math.max(0, part.quantity - units["not-issued"]);
  const { present, substitute, unverified } = units;
  /** A place holds one substitute, however little that counts for: those beyond are surplus. */
  const inPlaces = (which: "credit" | "atBest", places: number): number[] =>
    standIns
      .map((each) => each[which])
      .sort((a, b) => b - a)
      .slice(0, Math.max(0, places));
  const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
  const credits = inPlaces("credit", expected - present);
  const atBest = inPlaces("atBest", expected - present - unverified);
  const there = present + substitute + unverified;
  const absent = Math.min(units.absent, Math.max(0, expected - there));
  const unexamined = Math.max(0, expected - there - absent);
  const share = (counted: number) => Math.min(1, counted / expected);
  return {
    part: part.id,
    expected,
    present,
    substitute,
    credits,
    unverified,
    absent,
    unexamined,
    notIssued: units["not-issued"],
    surplus: Math.max(0, there - expected),
    share:
      expected === 0
        ? null
        : {
            low: share(present + sum(credits)),
            high: share(present + sum(atBest) + unverified + unexamined),
          },
  };
}

function complete(
  parts: readonly Part[],
  findings: ReadonlyMap<string, PartFinding>,
): StandingCompleteness | null {
  let weights = 0;
  let expected = 0;
  const weighted = { low: 0, high: 0 };
  const counted = { low: 0, high: 0 };
  for (const part of parts) {
    const finding = findings.get(part.id);
    if (!finding?.share) continue;
    weights += part.weight;
    expected += finding.expected;
    for (const end of ["low", "high"] as const) {
      weighted[end] += part.weight * finding.share[end];
      counted[end] += finding.expected * finding.share[end];
    }
  }
  if (expected === 0) return null;
  return {
    weighted: { low: weighted.low / weights, high: weighted.high / weights },
    counted: { ...counted, expected },
  };
}

/**
 * The best level of which every needed part that this example was issued is whole. A level that needs nothing which
 * it was issued cannot be said to be reached.
 */
function bestLevel(
  levels: readonly Level[],
  parts: ReadonlyMap<string, Part>,
  findings: ReadonlyMap<string, PartFinding>,
  end: keyof Bounds,
): string | null {
  const isReached = (level: Level) => {
    let isAnyIssued = false;
    for (const { id } of neededBy(level, parts)) {
      const share = findings.get(id)?.share;
      if (!share) continue;
      if (share[end] !== 1) return false;
      isAnyIssued = true;
    }
    return isAnyIssued;
  };
  return levels.find(isReached)?.id ?? null;
}

interface Reference {
  readonly parts: ReadonlyMap<string, Part>;
  readonly levels: readonly Level[];
}

interface Examined {
  readonly parts: ReadonlyMap<string, readonly PartLine[]>;
  readonly extras: readonly Extra[];
}

/** What of the reference is certainly there, and what may be: what is unverified or unexamined counts for nothing in the one, and in full in the other. */
export function assessCompleteness(reference: Reference, item: Examined): Completeness {
  const parts = [...reference.parts.values()];
  const findings = new Map(parts.map((part) => [part.id, findingOf(part, item.parts.get(part.id) ?? [])]));
  const ofStanding = (...wanted: Standing[]) =>
    complete(
      parts.filter((part) => wanted.includes(part.standing)),
      findings,
    );
  const where = (condition: (finding: PartFinding) => boolean) =>
    [...findings.values()]
      .filter((finding) => finding.expected > 0 && condition(finding))
      .map(({ part }) => part);
  return {
    parts: findings,
    main: ofStanding(...standings.filter(isMain)),
    consumable: ofStanding("consumable"),
    optional: ofStanding("optional"),
    level: {
      sure: bestLevel(reference.levels, reference.parts, findings, "low"),
      possible: bestLevel(reference.levels, reference.parts, findings, "high"),
    },
    missing: where((finding) => finding.absent >= finding.expected),
    partial: where((finding) => finding.absent > 0 && finding.absent < finding.expected),
    substitutes: where((finding) => finding.credits.length > 0),
    unverified: where((finding) => finding.unverified > 0),
    unexamined: where((finding) => finding.unexamined > 0),
    surplus: [...findings.values()].filter((finding) => finding.surplus > 0).map(({ part }) => part),
    extras: item.extras,
  };
}
