import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weightMap } from "../../shared/plots/case-plan/weight-map.ts";
import { roundStep, roundTicks } from "../../shared/plots/drawing/round-ticks.ts";
import { spreadOut } from "../../shared/plots/drawing/spread-out.ts";
import { brokenLines, shortened, textLines } from "../../shared/plots/drawing/text-lines.ts";
import { textWidth } from "../../shared/plots/drawing/text-width.ts";
import { overlaps, within } from "./drawing.ts";
import { name } from "./given.ts";

describe("weightMap", () => {
  // Bruls, Huizing, van Wijk (2000), Squarified Treemaps, section 3.1: a rectangle of 6 by 4 for 6, 6, 4, 3, 2, 2, 1
  // (cited from memory). Two sixes in a column 3 wide; 4 and 3 in a row 7/3 high; the sides below worked by hand.
  it("divides the rectangle of the paper as the paper does", () => {
    const boxes = weightMap([6, 6, 4, 3, 2, 2, 1], { x: 0, y: 0, width: 6, height: 4 });
    const sides = boxes.map(({ width, height }) => [width, height]);
    const expected = [
      [3, 2],
      [3, 2],
      [12 / 7, 7 / 3],
      [9 / 7, 7 / 3],
      [6 / 5, 5 / 3],
      [6 / 5, 5 / 3],
      [3 / 5, 5 / 3],
    ];
    for (const [at, [width = 0, height = 0]] of expected.entries()) {
      expect(sides[at]?.[0]).toBeCloseTo(width, 9);
      expect(sides[at]?.[1]).toBeCloseTo(height, 9);
    }
  });

  it("gives each weight its share, fills the rectangle, and overlaps nowhere", () => {
    const weights = fc.array(fc.double({ min: 0.1, max: 100, noNaN: true }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(weights, fc.constantFrom(1, 1.5, 2), (given, shape) => {
        const into = { x: 3, y: 5, width: 640, height: 300 };
        const boxes = weightMap(given, into, shape);
        const total = given.reduce((sum, weight) => sum + weight, 0);
        boxes.forEach((box, at) => {
          expect((box.width * box.height) / (640 * 300)).toBeCloseTo((given[at] ?? 0) / total, 6);
          expect(within(box, into, 1e-6)).toBe(true);
          expect(boxes.slice(at + 1).some((other) => overlaps(box, other, 1e-6))).toBe(false);
        });
      }),
    );
  });
});

describe("roundTicks", () => {
  it("marks round numbers only, evenly, within the span, no closer than asked", () => {
    expect(roundTicks(1931, 1938, 1.5)).toEqual([1932, 1934, 1936, 1938]);
    expect(roundTicks(1870, 2026, 30)).toEqual([1900, 1950, 2000]);
    expect(roundTicks(2020, 2020, 3)).toEqual([2020]);
    const closest = fc.double({ min: 0.1, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(fc.nat({ max: 1e6 }), fc.nat({ max: 1e4 }), closest, (low, length, least) => {
        const ticks = roundTicks(low, low + length, least);
        for (const tick of ticks)
          expect(tick >= low && tick <= low + length && Number.isInteger(tick)).toBe(true);
        const steps = new Set(ticks.slice(1).map((tick, at) => tick - (ticks[at] ?? 0)));
        expect(steps.size).toBeLessThanOrEqual(1);
        for (const step of steps) {
          expect(String(step)).toMatch(/^[125]0*$/);
          expect(step).toBeGreaterThanOrEqual(least);
        }
      }),
    );
  });

  it("knows the next round step", () => {
    expect([0.3, 1, 1.2, 3, 7, 11, 60].map(roundStep)).toEqual([1, 1, 2, 5, 10, 20, 100]);
  });
});

describe("spreadOut", () => {
  it("leaves alone what has room", () => {
    expect(
      spreadOut(
        [
          { at: 10, size: 10 },
          { at: 40, size: 10 },
        ],
        0,
      ),
    ).toEqual([10, 40]);
  });

  it("parts two in one place evenly, and keeps clear of the edge", () => {
    const two = [
      { at: 50, size: 10 },
      { at: 50, size: 10 },
    ];
    expect(spreadOut(two, 0)).toEqual([45, 55]);
    expect(spreadOut(two, 60)).toEqual([65, 75]);
  });

  it("keeps order and lets nothing overlap", () => {
    const extents = fc.array(fc.record({ at: fc.nat({ max: 300 }), size: fc.integer({ min: 1, max: 60 }) }), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(extents, (given) => {
        const sorted = [...given].sort((a, b) => a.at - b.at);
        const middles = spreadOut(sorted, 0);
        middles.forEach((middle, at) => {
          const size = sorted[at]?.size ?? 0;
          expect(middle - size / 2).toBeGreaterThanOrEqual(-1e-9);
          const next = middles[at + 1];
          if (next !== undefined)
            expect(middle + size / 2).toBeLessThanOrEqual(next - (sorted[at + 1]?.size ?? 0) / 2 + 1e-9);
        });
      }),
    );
  });
});

describe("text in its room", () => {
  it("never makes a line wider than the room, nor loses a letter", () => {
    fc.assert(
      fc.property(name, fc.integer({ min: 14, max: 200 }), (text, width) => {
        const lines = brokenLines(text, 12, width);
        for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(width);
        expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
        expect(textWidth(shortened(text, 12, width), 12)).toBeLessThanOrEqual(width);
      }),
    );
  });

  it("breaks between words, and not at a no-break space", () => {
    expect(textLines("Horizon shade", 12, 60)).toEqual(["Horizon", "shade"]);
    expect(textLines("Shade ×\u00a04", 12, 36)).toEqual(["Shade", "×\u00a04"]);
    expect(textLines("Horizon", 12, 20)).toBeNull();
  });
});
