import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  greatestScale,
  keptInside,
  movedBy,
  type Point,
  scaledAbout,
  type View,
  wholeExtent,
} from "../../templates/scripts/closer/sheet-view.ts";

const length = fc.integer({ min: 50, max: 4000 });
const extent = fc.record({ width: length, height: length });
const number = fc.double({ min: -5000, max: 5000, noNaN: true });
const point = fc.record({ x: number, y: number });
const view = fc.record({ x: number, y: number, scale: fc.double({ min: 1, max: 12, noNaN: true }) });
const factor = fc.double({ min: 0.05, max: 20, noNaN: true });

/** What of the picture lies under a point of the stage, in units of the whole picture's first size. */
const under = ({ x, y, scale }: View, at: Point) => ({ x: (at.x - x) / scale, y: (at.y - y) / scale });

describe("a picture looked at closely", () => {
  it("is seen whole, as large as fits, in its own proportions, and never larger than it is", () => {
    fc.assert(
      fc.property(extent, extent, (picture, stage) => {
        const whole = wholeExtent(picture, stage);
        expect(whole.width).toBeLessThanOrEqual(Math.min(stage.width, picture.width) + 1e-9);
        expect(whole.height).toBeLessThanOrEqual(Math.min(stage.height, picture.height) + 1e-9);
        expect(whole.width * picture.height).toBeCloseTo(whole.height * picture.width, 3);
        const fills = [stage.width - whole.width, stage.height - whole.height, picture.width - whole.width];
        expect(Math.min(...fills.map(Math.abs))).toBeLessThan(1e-6);
      }),
    );
  });

  it("keeps under the pointer what lies there, however it is brought nearer", () => {
    fc.assert(
      fc.property(view, point, factor, (before, at, by) => {
        const after = scaledAbout(before, at, by, 12);
        expect(after.scale).toBeGreaterThanOrEqual(1);
        expect(after.scale).toBeLessThanOrEqual(12);
        expect(under(after, at).x).toBeCloseTo(under(before, at).x, 4);
        expect(under(after, at).y).toBeCloseTo(under(before, at).y, 4);
      }),
    );
  });

  it("goes back to where it was when it is brought nearer and farther again", () => {
    fc.assert(
      fc.property(view, point, fc.double({ min: 1, max: 3, noNaN: true }), (before, at, by) => {
        const after = scaledAbout(scaledAbout(before, at, by, 100), at, 1 / by, 100);
        expect(after.scale).toBeCloseTo(before.scale, 6);
        expect(after.x).toBeCloseTo(before.x, 4);
        expect(after.y).toBeCloseTo(before.y, 4);
      }),
    );
  });

  it("leaves no gap that it could fill, and stands in the middle where it cannot", () => {
    fc.assert(
      fc.property(extent, extent, view, (picture, stage, anywhere) => {
        const whole = wholeExtent(picture, stage);
        const { x, y, scale } = keptInside(anywhere, whole, stage);
        for (const [at, sheet, opening] of [
          [x, whole.width * scale, stage.width],
          [y, whole.height * scale, stage.height],
        ] as const) {
          if (sheet <= opening) expect(at).toBeCloseTo(opening - sheet - at, 6);
          else {
            expect(at).toBeLessThanOrEqual(1e-9);
            expect(at + sheet).toBeGreaterThanOrEqual(opening - 1e-6);
          }
        }
        // Kept once, it is kept.
        const again = keptInside({ x, y, scale }, whole, stage);
        expect(again.x).toBeCloseTo(x, 6);
        expect(again.y).toBeCloseTo(y, 6);
      }),
    );
  });

  it("can be moved to show each of its corners once it is nearer", () => {
    const stage = { width: 800, height: 600 };
    const whole = wholeExtent({ width: 1600, height: 1200 }, stage);
    const nearer = scaledAbout({ x: 0, y: 0, scale: 1 }, { x: 400, y: 300 }, 2, 4);
    expect(keptInside(movedBy(nearer, { x: 9999, y: 9999 }), whole, stage)).toEqual({ x: 0, y: 0, scale: 2 });
    expect(keptInside(movedBy(nearer, { x: -9999, y: -9999 }), whole, stage)).toEqual({
      x: -800,
      y: -600,
      scale: 2,
    });
  });

  it("comes near enough to see each of its points as two by two, and three times in any case", () => {
    expect(greatestScale({ width: 2200, height: 1467 }, { width: 1100, height: 733 })).toBe(4);
    expect(greatestScale({ width: 400, height: 300 }, { width: 400, height: 300 })).toBe(3);
  });
});
