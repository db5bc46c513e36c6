import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import { reallocate, sparesOf, wantsOf } from "../../../shared/assessments/completing.ts";
import { attributesOf, likenessRow, nearestIn } from "../../../shared/assessments/likeness.ts";
import { examplesOf } from "../../../shared/assessments/rarity/examples.ts";
import type { Item } from "../../../shared/records/item.ts";
import { line, part, sighting, variant } from "./given.ts";

const reference = variant("a", {
  parts: [
    part("body", { standing: "core", weight: 3 }),
    part("lens", { quantity: 2, weight: 2 }),
    part("hook", { quantity: 3 }),
  ],
});

/** How many of each are there; what is not there is known to be gone. `tied`: all of it belongs to its set. */
const counted = fc.record({
  body: fc.integer({ min: 0, max: 3 }),
  lens: fc.integer({ min: 0, max: 5 }),
  hook: fc.integer({ min: 0, max: 6 }),
  tied: fc.subarray(["body", "lens", "hook"]),
});

const examined = (
  { tied, ...counts }: typeof counted extends fc.Arbitrary<infer Of> ? Of : never,
  at: number,
) => {
  const parts = new Map(
    Object.entries(counts).map(([id, quantity]) => {
      const belongs = tied.includes(id) ? ("set" as const) : undefined;
      return [id, [quantity === 0 ? line("absent") : line("present", { quantity, rest: "absent", belongs })]];
    }),
  );
  return {
    item: { id: `i${at}`, parts } as unknown as Item,
    completeness: assessCompleteness(reference, { parts, extras: [] }),
  };
};

describe("the reallocation of spare units", () => {
  it("gains as much as can be gained, and takes nothing that a case needs or that belongs to its set", () => {
    fc.assert(
      fc.property(fc.array(counted, { minLength: 1, maxLength: 4 }), (counts) => {
        const examples = counts.map(examined);
        const found = reallocate(reference, examples);
        // A case with units to spare wants none of them, so each part by itself: the wanted units that gain
        // most are filled while the spare ones last. A unit of a part of quantity q and weight w gains w/q of 6.
        const best = [...reference.parts.values()].reduce((sum, { id, quantity, weight }) => {
          const of = counts.map((each) => ({ there: each[id as "body"], tied: each.tied.includes(id) }));
          const spare = of.reduce(
            (total, { there, tied }) => total + (tied ? 0 : Math.max(0, there - quantity)),
            0,
          );
          const wanted = of.reduce((total, { there }) => total + Math.max(0, quantity - there), 0);
          return sum + (Math.min(spare, wanted) * weight) / quantity / 6;
        }, 0);
        expect(found?.gain ?? 0).toBeCloseTo(best, 9);
        for (const { part: id, from, to, units } of found?.moves ?? []) {
          const [giver, taker] = [from, to].map((of) => counts[Number(of.slice(1))]);
          expect(from).not.toBe(to);
          expect(giver?.tied).not.toContain(id);
          const { quantity = 0 } = reference.parts.get(id) ?? {};
          expect((giver?.[id as "body"] ?? 0) - units).toBeGreaterThanOrEqual(quantity);
          expect((taker?.[id as "body"] ?? 0) + units).toBeLessThanOrEqual(quantity);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("wants what is gone, most gain first, and spares what is left over", () => {
    fc.assert(
      fc.property(counted, (counts) => {
        const one = examined(counts, 0);
        const wants = wantsOf(reference, one);
        const gains = wants.map(({ gain }) => gain);
        expect(gains).toEqual([...gains].sort((a, b) => b - a));
        const low = one.completeness.main?.weighted.low ?? 0;
        expect(low + gains.reduce((sum, gain) => sum + gain, 0)).toBeCloseTo(1, 9);
        const spare = new Set(sparesOf(one).map(({ part: id }) => id));
        for (const { part: id } of wants) expect(spare.has(id)).toBe(false);
      }),
    );
  });
});

describe("the nearest examples", () => {
  it("are alike both ways round, the likest first, and never the example itself", () => {
    const state = fc.constantFrom("present", "absent", undefined);
    const known = fc.record({ body: state, lens: state, lock: fc.constantFrom("iron", "brass", undefined) });
    fc.assert(
      fc.property(fc.array(known, { minLength: 1, maxLength: 6 }), (table) => {
        const compared = { features: ["lock"], parts: ["body", "lens"] };
        const log = table.map((each) => {
          const those = (wanted: string) => (["body", "lens"] as const).filter((id) => each[id] === wanted);
          return sighting({ present: those("present"), absent: those("absent") });
        });
        const rows = examplesOf(reference, log, []).map((example, at) => {
          const lock = table[at]?.lock;
          return likenessRow(
            lock === undefined ? example : { ...example, features: new Map([["lock", lock]]) },
            compared,
          );
        });
        const nearestTo = nearestIn(rows, attributesOf(compared));
        const likeness = (a: number, b: number) =>
          nearestTo(rows[a] as (typeof rows)[number], 9).find(({ example }) => example === rows[b]?.example)
            ?.likeness;
        rows.forEach((row, at) => {
          const near = nearestTo(row, 9);
          expect(near.some(({ example }) => example === row.example)).toBe(false);
          expect(near.map(({ likeness: of }) => of)).toEqual(
            near.map(({ likeness: of }) => of).sort((a, b) => b - a),
          );
          for (const { likeness: of } of near) expect(of >= 0 && of <= 1).toBe(true);
          rows.forEach((_, other) => {
            expect(likeness(at, other)).toBe(likeness(other, at));
          });
        });
      }),
    );
  });
});
