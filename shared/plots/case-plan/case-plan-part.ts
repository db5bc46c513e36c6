import type { PartSummary, PublishedItemPart } from "../../publication/published.ts";

/** As much of a published part as its compartment shows; without `summary` it is the plan of what was issued. */
export interface CasePlanPart {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly weight: number;
  /** Left, top, width, height, in any one unit. */
  readonly plan: readonly [number, number, number, number] | null;
  readonly summary?: PartSummary;
  /** How many of the part are in each state. */
  readonly units?: PublishedItemPart["units"];
}

export interface UnitsInState {
  readonly state: PartSummary;
  readonly units: number;
}

/** The states that a part's units are in, with how many. */
export const unitsByState = (units: PublishedItemPart["units"]): readonly UnitsInState[] =>
  (
    [
      { state: "present", units: units.present },
      { state: "substitute", units: units.substitute },
      { state: "unverified", units: units.unverified },
      { state: "absent", units: units.absent },
      { state: "unexamined", units: units.unexamined },
      { state: "not-issued", units: units.notIssued },
    ] as const
  ).filter((each) => each.units > 0);

/** A layer of a compartment, as deep as its share of the units that belong to the example. */
export interface Band {
  readonly state: PartSummary;
  readonly share: number;
}

/**
 * From the bottom up, with what is missing on top; none where all units are in one state. Units beyond those that
 * belong have no place.
 */
export function bandsOf({ units }: Pick<CasePlanPart, "units">): readonly Band[] {
  if (!units || units.expected === 0) return [];
  let left = units.expected;
  const isMissing = ({ state }: UnitsInState) => Number(state === "absent");
  const fromBottom = [...unitsByState(units)].sort((a, b) => isMissing(a) - isMissing(b));
  const bands = fromBottom.flatMap(({ state, units: each }): Band[] => {
    if (state === "not-issued" || left === 0) return [];
    const fitting = Math.min(each, left);
    left -= fitting;
    return [{ state, share: fitting / units.expected }];
  });
  return bands.length > 1 ? bands : [];
}

/** A doubt is told in full by the list of parts; where a compartment has no room for all, a loss goes before it. */
const gravest: readonly PartSummary[] = ["absent", "substitute", "unverified", "unexamined"];

/**
 * For a compartment that has no room for the word: beside its number, and before the word where the numbers are
 * explained. What is there needs none.
 */
const signs: Readonly<Partial<Record<PartSummary, string>>> = {
  absent: "–",
  substitute: "~",
  unverified: "?",
  unexamined: "…",
  "not-issued": "/",
};

export type StateWord = (state: PartSummary, units?: number) => string;

/**
 * What a compartment says of its part: one word, or how many units are in each state, and, where there is no
 * room for that, what matters most of it. Null in a plan of what was issued.
 */
export function stateOfPart(
  { summary, units }: Pick<CasePlanPart, "summary" | "units">,
  stateWord: StateWord,
): { readonly full: string; readonly short: string; readonly sign: string } | null {
  if (summary === undefined) return null;
  const found = units ? unitsByState(units) : [];
  if (found.length < 2) {
    const state = found[0]?.state ?? summary;
    const word = stateWord(state);
    return { full: word, short: word, sign: signs[state] ?? "" };
  }
  const worst = gravest.flatMap((state) => found.find((each) => each.state === state) ?? [])[0] ?? found[0];
  const say = (each: UnitsInState) => stateWord(each.state, each.units);
  return {
    full: found.map(say).join(", "),
    short: worst ? say(worst) : stateWord(summary),
    sign: signs[worst?.state ?? summary] ?? "",
  };
}
