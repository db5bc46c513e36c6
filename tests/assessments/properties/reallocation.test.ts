import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import { reallocate } from "../../../shared/assessments/reallocation.ts";
import { line, part, variant } from "./given.ts";
import { item } from "./given-collection.ts";

const models = { tin: 0.25, brass: 0.5, true: 1 };

/** One part of one example, in units. Of a part that is tied every unit belongs to its set. */
interface Units {
  present: number;
  tin: number;
  brass: number;
  true: number;
  strange: number;
  absent: number;
  notIssued: number;
  tied: boolean;
}

const few = (max: number) => fc.integer({ min: 0, max });
const units: fc.Arbitrary<Units> = fc.record({
  present: few(3),
  tin: few(1),
  brass: few(1),
  true: few(1),
  strange: few(1),
  absent: few(2),
  notIssued: few(1),
  tied: fc.boolean(),
});

/** Two parts of which each has its own weight and quantity, and up to three examples. */
const cases = fc.record({
  parts: fc.array(
    fc.record({ weight: fc.integer({ min: 1, max: 9 }), quantity: fc.integer({ min: 1, max: 3 }) }),
    {
      minLength: 2,
      maxLength: 2,
    },
  ),
  examples: fc.array(fc.array(units, { minLength: 2, maxLength: 2 }), { minLength: 2, maxLength: 3 }),
});

type Case = typeof cases extends fc.Arbitrary<infer Of> ? Of : never;

function found({ parts, examples }: Case) {
  const reference = variant("a", {
    parts: parts.map((each, at) => part(`p${at}`, { ...each, accepts: new Map(Object.entries(models)) })),
  });
  return reallocate(
    reference,
    examples.map((of, at) => {
      const lines = of.map(({ present, tin, brass, true: full, strange, absent, notIssued, tied }, which) => {
        const belongs = tied ? ("set" as const) : undefined;
        const written = [
          line("present", { quantity: present, belongs }),
          line("substitute", { quantity: tin, model: "tin" }),
          line("substitute", { quantity: brass, model: "brass" }),
          line("substitute", { quantity: full, model: "true" }),
          line("substitute", { quantity: strange, model: "strange" }),
          line("absent", { quantity: absent }),
          line("not-issued", { quantity: notIssued }),
        ].filter(({ quantity }) => quantity !== 0);
        return [`p${which}`, written] as const;
      });
      const one = item(`i${at}`, { parts: new Map(lines.filter(([, written]) => written.length > 0)) });
      return { item: one, completeness: assessCompleteness(reference, one) };
    }),
  );
}

const expectedOf = ({ notIssued }: Units, quantity: number) => Math.max(0, quantity - notIssued);

/**
 * The certain units of a part with so many right ones more or fewer than are there: a right one goes where one is gone, or
 * takes the place of a substitute, in whichever way makes most of it. No more are gone than there are empty places.
 */
function certainUnits(of: Units, expected: number, more: number): number {
  const credits = [
    ...Array<number>(of.tin).fill(models.tin),
    ...Array<number>(of.brass).fill(models.brass),
    ...Array<number>(of.true).fill(models.true),
    ...Array<number>(of.strange).fill(0),
  ];
  const gone = Math.min(of.absent, Math.max(0, expected - of.present - credits.length));
  let best = Number.NEGATIVE_INFINITY;
  // Each subset of the substitutes that may be taken out.
  for (let out = 0; out < 2 ** credits.length; out++) {
    const taken = credits.filter((_, at) => out & (1 << at)).length;
    if (taken > Math.max(0, more) || more - taken > gone) continue;
    // Each place holds one thing: what stands in beyond the places is surplus.
    const places = Math.max(0, expected - of.present - more);
    const left = credits
      .filter((_, at) => !(out & (1 << at)))
      .sort((a, b) => b - a)
      .slice(0, places)
      .reduce((sum, credit) => sum + credit, 0);
    best = Math.max(best, of.present + more + left);
  }
  return best;
}

/** The most that any way of sending the spare units gains: every one of them to each of the others, or to none. */
function bestByTrying({ parts, examples }: Case): number {
  const spare: { part: number; from: number }[] = [];
  for (const [from, of] of examples.entries()) {
    for (const [at, each] of of.entries()) {
      const count = each.tied ? 0 : each.present - expectedOf(each, parts[at]?.quantity ?? 0);
      for (let unit = 0; unit < count; unit++) spare.push({ part: at, from });
    }
  }
  const certain = (moved: number[][]): number =>
    examples.reduce((sum, of, which) => {
      let [weights, there] = [0, 0];
      for (const [at, { weight, quantity }] of parts.entries()) {
        const each = of[at] as Units;
        const expected = expectedOf(each, quantity);
        if (expected === 0) continue;
        weights += weight;
        there += weight * Math.min(1, certainUnits(each, expected, moved[which]?.[at] ?? 0) / expected);
      }
      return weights === 0 ? sum : sum + there / weights;
    }, 0);
  const moved = examples.map(() => parts.map(() => 0));
  const add = (example: number, at: number, more: number) => {
    const row = moved[example];
    if (row) row[at] = (row[at] ?? 0) + more;
  };
  const before = certain(moved);
  let best = before;
  const send = (next: number) => {
    const unit = spare[next];
    if (!unit) {
      const after = certain(moved);
      if (after > best) best = after;
      return;
    }
    send(next + 1);
    add(unit.from, unit.part, -1);
    for (const to of examples.keys()) {
      if (to === unit.from) continue;
      add(to, unit.part, 1);
      send(next + 1);
      add(to, unit.part, -1);
    }
    add(unit.from, unit.part, 1);
  };
  send(0);
  return best - before;
}

describe("the reallocation of spare units", () => {
  it("gains as much as the best of all ways to send them, and takes nothing that a case needs or that belongs to its set", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const reallocation = found(given);
        expect(reallocation?.gain ?? 0).toBeCloseTo(bestByTrying(given), 9);
        const sent = new Map<string, number>();
        for (const { part: id, from, to, units: count } of reallocation?.moves ?? []) {
          expect(from).not.toBe(to);
          expect(count).toBeGreaterThan(0);
          sent.set(`${from} ${id}`, (sent.get(`${from} ${id}`) ?? 0) + count);
        }
        for (const [key, count] of sent) {
          const [from, at] = key.split(" ").map((name) => Number(name.slice(1)));
          const giver = given.examples[from ?? 0]?.[at ?? 0] as Units;
          expect(giver.tied).toBe(false);
          expect(giver.present - count).toBeGreaterThanOrEqual(
            expectedOf(giver, given.parts[at ?? 0]?.quantity ?? 0),
          );
        }
      }),
      { numRuns: 200 },
    );
  });
});
