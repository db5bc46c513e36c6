import fc from "fast-check";
import type { CasePlanPart } from "../../shared/plots/case-plan/case-plan.ts";
import type { PartSummary } from "../../shared/publication/published.ts";
import { english } from "../../shared/words/en/english.ts";
import { englishPlots } from "../../shared/words/en/plots.ts";
import type { YearsOf } from "../../shared/words/plot-words.ts";

export const words = { ...english, plots: englishPlots };

export const summaries: readonly PartSummary[] = [
  "present",
  "incomplete",
  "substitute",
  "unverified",
  "partly-examined",
  "unexamined",
  "absent",
  "not-issued",
];

export const stateWord = (state: PartSummary, units?: number): string =>
  (units === undefined ? "" : `${units}\u00a0`) + state.replace("-", " ");

/** The units of a part, in those states that are given. */
export const unitsOf = (
  expected: number,
  given: Partial<NonNullable<CasePlanPart["units"]>>,
): NonNullable<CasePlanPart["units"]> => ({
  expected,
  present: 0,
  substitute: 0,
  unverified: 0,
  absent: 0,
  unexamined: 0,
  notIssued: 0,
  surplus: 0,
  ...given,
});

/** Years as written, for tests that need no more of EDTF. */
export const yearsOf: YearsOf = (edtf) => {
  if (edtf === "") return null;
  const [from = "", to = from] = edtf.split("/");
  const year = (text: string, open: number) =>
    text === "" ? null : text === ".." ? open : Number(text.slice(0, 4));
  const [first, last] = [year(from, Number.NEGATIVE_INFINITY), year(to, Number.POSITIVE_INFINITY)];
  return { first, last, through: first === null || last === null ? null : { first, last } };
};

const syllable = fc.constantFrom("Wolf", "ram", "il", "mm", "stativ", "& co", "Øre", "<b>", '"', "lens", "-");
export const name = fc
  .array(
    fc.array(syllable, { minLength: 1, maxLength: 3 }).map((pieces) => pieces.join("")),
    {
      minLength: 1,
      maxLength: 5,
    },
  )
  .map((list) => list.join(" "));

const weight = fc.oneof(
  fc.integer({ min: 1, max: 10 }),
  fc.double({ min: 0.01, max: 1000, noNaN: true }),
  fc.constant(0),
);

const few = fc.integer({ min: 0, max: 9 });

const rectangle = fc.tuple(
  fc.double({ min: 0, max: 10, noNaN: true }),
  fc.double({ min: 0, max: 10, noNaN: true }),
  fc.double({ min: 0.01, max: 5, noNaN: true }),
  fc.double({ min: 0.01, max: 5, noNaN: true }),
);

export const part = (
  plan: fc.Arbitrary<CasePlanPart["plan"]> = fc.option(rectangle, { nil: null, freq: 2 }),
): fc.Arbitrary<CasePlanPart> =>
  fc.record({
    id: fc.constantFrom("constructor", "toString", "a-part", "sextant"),
    name,
    quantity: fc.integer({ min: 1, max: 40 }),
    weight,
    plan,
    summary: fc.constantFrom(...summaries),
    units: fc.option(
      fc.record({
        expected: few,
        present: few,
        substitute: few,
        unverified: few,
        absent: few,
        unexamined: few,
        notIssued: few,
        surplus: few,
      }),
      { nil: undefined },
    ),
  });

/** How many rectangles, at most, begin where another has ended, from left to right. */
export function mostAbreast(plans: readonly (readonly [number, number, number, number])[]): number {
  let [count, end] = [0, Number.NEGATIVE_INFINITY];
  for (const [x, , width] of [...plans].sort((a, b) => a[0] + a[2] - b[0] - b[2])) {
    if (x < end - 1e-9) continue;
    count++;
    end = x + width;
  }
  return count;
}

/** A tray cut again and again along or across, so that its rectangles fill it without overlap. */
export const cutTray: fc.Arbitrary<readonly (readonly [number, number, number, number])[]> = fc
  .array(fc.tuple(fc.nat(), fc.boolean(), fc.double({ min: 0.25, max: 0.75, noNaN: true })), {
    maxLength: 24,
  })
  .map((cuts) => {
    const boxes: [number, number, number, number][] = [[0, 0, 40, 30]];
    for (const [pick, along, share] of cuts) {
      const at = pick % boxes.length;
      const [x, y, width, height] = boxes[at] ?? [0, 0, 1, 1];
      const halves: [number, number, number, number][] = along
        ? [
            [x, y, width * share, height],
            [x + width * share, y, width * (1 - share), height],
          ]
        : [
            [x, y, width, height * share],
            [x, y + height * share, width, height * (1 - share)],
          ];
      boxes.splice(at, 1, ...halves);
    }
    return boxes;
  });
