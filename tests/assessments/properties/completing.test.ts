import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import { sparesOf, wantsOf } from "../../../shared/assessments/completing.ts";
import { attributesOf, likenessesIn, likenessRow, nearestOf } from "../../../shared/assessments/likeness.ts";
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

const examined = ({ tied, ...counts }: typeof counted extends fc.Arbitrary<infer Of> ? Of : never) => {
  const parts = new Map(
    Object.entries(counts).map(([id, quantity]) => {
      const belongs = tied.includes(id) ? ("set" as const) : undefined;
      return [id, [quantity === 0 ? line("absent") : line("present", { quantity, rest: "absent", belongs })]];
    }),
  );
  return {
    item: { id: "one", parts } as unknown as Item,
    completeness: assessCompleteness(reference, { parts, extras: [] }),
  };
};

describe("what is wanted and what is spare", () => {
  it("wants what is gone, most gain first, and spares what is left over", () => {
    fc.assert(
      fc.property(counted, (counts) => {
        const one = examined(counts);
        const wants = wantsOf(reference, one);
        const gains = wants.map(({ gain }) => gain);
        expect(gains).toEqual([...gains].sort((a, b) => b - a));
        const low = one.completeness.main?.weighted.low ?? 0;
        expect(low + gains.reduce((sum, gain) => sum + gain, 0)).toBeCloseTo(1, 9);
        const spare = new Set(sparesOf(reference, one).map(({ part: id }) => id));
        for (const { part: id } of wants) expect(spare.has(id)).toBe(false);
      }),
    );
  });
});

describe("the nearest examples", () => {
  it("are alike both ways round, the likest first and those compared on little last, and never the example itself", () => {
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
        const likenessesTo = likenessesIn(rows, attributesOf(compared));
        const nearestTo = (row: (typeof rows)[number], most: number) => nearestOf(likenessesTo(row), most);
        const likeness = (a: number, b: number) =>
          nearestTo(rows[a] as (typeof rows)[number], 9).find(({ example }) => example === rows[b]?.example)
            ?.likeness;
        rows.forEach((row, at) => {
          const near = nearestTo(row, 9);
          expect(near.some(({ example }) => example === row.example)).toBe(false);
          const best = Math.max(0, ...near.map(({ compared: known }) => known));
          const little = near.filter(({ compared: known }) => known < best / 2);
          expect(near.slice(near.length - little.length)).toEqual(little);
          for (const those of [near.slice(0, near.length - little.length), little]) {
            const likenesses = those.map(({ likeness: of }) => of);
            expect(likenesses).toEqual(likenesses.toSorted((a, b) => b - a));
          }
          for (const { likeness: of } of near) expect(of >= 0 && of <= 1).toBe(true);
          rows.forEach((_, other) => {
            expect(likeness(at, other)).toBe(likeness(other, at));
          });
        });
      }),
    );
  });
});
