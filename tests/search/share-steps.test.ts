import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { percentOfStep, shareOfStep, shareStep } from "../../shared/pages/search/share-steps.ts";
import { english } from "../../shared/words/english.ts";

const shares = fc.double({ min: 0, max: 1, noNaN: true });

describe("steps of a share", () => {
  it("read as the share reads, wherever it is printed", () =>
    fc.assert(
      fc.property(shares, (share) => {
        expect(english.numbers.share(shareOfStep(shareStep(share)))).toBe(english.numbers.share(share));
      }),
    ));

  // Halves, where two ways of rounding part: every half percent as a decimal fraction.
  it.each(Array.from({ length: 100 }, (_, percent) => (2 * percent + 1) / 200))(
    "%f reads the same",
    (share) =>
      expect(english.numbers.share(shareOfStep(shareStep(share)))).toBe(english.numbers.share(share)),
  );

  it("never fall while the share rises, and nor does their percent", () =>
    fc.assert(
      fc.property(shares, shares, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(shareStep(low)).toBeLessThanOrEqual(shareStep(high));
        expect(percentOfStep(shareStep(low))).toBeLessThanOrEqual(percentOfStep(shareStep(high)));
      }),
    ));

  it("stay within half a percent of the share", () =>
    fc.assert(
      fc.property(shares, (share) => {
        expect(Math.abs(percentOfStep(shareStep(share)) - 100 * share)).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    ));
});
