import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { percentOfStep, shareOfStep, shareStep, shareSteps } from "../../shared/pages/search/share-steps.ts";
import { english } from "../../shared/words/en/english.ts";
import { shareBounds } from "../../shared/words/share-bounds.ts";

const shares = fc.double({ min: 0, max: 1, noNaN: true });

describe("steps of a share", () => {
  it("read as the share reads, wherever it is printed", () =>
    fc.assert(
      fc.property(shares, (share) => {
        expect(english.numbers.share(shareOfStep(shareStep(share)))).toBe(english.numbers.share(share));
      }),
    ));

  it("of a completeness read as its two ends do, and never say more than they are", () =>
    fc.assert(
      fc.property(shares, shares, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const { certain, possible } = shareBounds({ low, high }, english.numbers);
        const steps = shareSteps({ low, high });
        expect(english.numbers.share(shareOfStep(steps.low))).toBe(certain);
        if (possible === null) return;
        expect(english.numbers.share(shareOfStep(steps.high))).toBe(possible);
        if (low >= 0.01) expect(percentOfStep(steps.low) / 100).toBeLessThanOrEqual(low + 1e-9);
        if (high <= 0.99) expect(percentOfStep(steps.high) / 100).toBeGreaterThanOrEqual(high - 1e-9);
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
