import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectedEntropy, type FoundWith } from "../../shared/statistics/expected-entropy.ts";
import { reference } from "./reference.ts";

const candidates = fc.array(fc.array(fc.constantFrom("a", "b", "c", "d"), { maxLength: 3 }), {
  minLength: 1,
  maxLength: 8,
});

/** A value that one may show and another not would speak against the other; of whom nothing is known may show all. */
function canSplit(found: readonly FoundWith[]): boolean {
  const shown = ["a", "b", "c", "d"].filter((value) => found.some((values) => values.includes(value)));
  return shown.some((value) => found.some((values) => values.length > 0 && !values.includes(value)));
}

describe("expectedEntropy", () => {
  it.each(reference.entropies)(
    "agrees with the joint table in R: $candidates",
    ({ candidates: found, entropy }) => {
      // R has NULL where nothing is known.
      expect(expectedEntropy(found.map((values) => values ?? []))).toBeCloseTo(entropy, 12);
    },
  );

  it.each<[FoundWith[], number]>([
    // By hand: log2 of how many stay together.
    [[["a"], ["a"], ["b"], ["b"]], 1],
    [[["a"], ["a"], ["a"], ["a"], ["b"], ["b"], ["b"], ["b"]], 2],
    [[["a"], ["b"], ["c"]], 0],
    [[["a"], ["a"]], 1],
    [[[], [], [], []], 2],
    [[["a"]], 0],
    [[[]], 0],
    // A value named twice is one value; ids that Object has of its own are ids.
    [[["a", "a"], ["b"]], 0],
    [[["constructor"], ["toString"]], 0],
  ])("of %j is %d bits", (found, bits) => {
    expect(expectedEntropy(found)).toBeCloseTo(bits, 12);
    expect(Object.is(expectedEntropy(found), -0)).toBe(false);
  });

  it("lies between 0 and the doubt that there was, which a feature that cannot split leaves as it was", () => {
    fc.assert(
      fc.property(candidates, (found) => {
        const entropy = expectedEntropy(found);
        const before = Math.log2(found.length);
        expect(entropy).toBeGreaterThanOrEqual(0);
        expect(entropy).toBeLessThanOrEqual(before + 1e-12);
        expect(canSplit(found)).toBe(entropy < before - 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it("does not depend on the order of the candidates", () => {
    fc.assert(
      fc.property(candidates, (found) => {
        expect(expectedEntropy(found.toReversed())).toBeCloseTo(expectedEntropy(found), 12);
      }),
    );
  });

  it("needs a candidate", () => {
    expect(() => expectedEntropy([])).toThrow(new RangeError("Found no candidates; expected at least one."));
  });
});
