import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { encodingsAt, fallbackWidth, planSizes, settingsKey } from "../../shared/images/plan-image.ts";

const widthsOf = (width: number, height: number) => planSizes({ width, height }).map((size) => size.width);

const upright = fc.record({
  width: fc.integer({ min: 1, max: 20_000 }),
  height: fc.integer({ min: 1, max: 20_000 }),
});

describe("the sizes of a photograph", () => {
  it("of a camera are those of the layout, at one and two device pixels to the CSS pixel", () => {
    expect(planSizes({ width: 6000, height: 4000 })).toEqual([
      { width: 320, height: 213 },
      { width: 640, height: 427 },
      { width: 860, height: 573 },
      { width: 1100, height: 733 },
      { width: 1600, height: 1067 },
      { width: 2200, height: 1467 },
    ]);
  });

  it("never go beyond its own, and leave out a width that is nearly its own", () => {
    expect(widthsOf(1000, 750)).toEqual([320, 640, 860, 1000]);
    expect(widthsOf(900, 600)).toEqual([320, 640, 900]);
    expect(widthsOf(320, 240)).toEqual([320]);
    expect(widthsOf(12, 9)).toEqual([12]);
    expect(widthsOf(1, 1)).toEqual([1]);
  });

  it("hold a portrait of 2:3 at full width, and a taller one to the same height", () => {
    expect(planSizes({ width: 4000, height: 6000 }).at(-1)).toEqual({ width: 2200, height: 3300 });
    expect(planSizes({ width: 3024, height: 5376 }).at(-1)).toEqual({ width: 1856, height: 3300 });
    expect(planSizes({ width: 10, height: 60_000 })).toEqual([{ width: 1, height: 3300 }]);
  });

  it("rise, stay within the original, and keep its shape to the pixel", () => {
    fc.assert(
      fc.property(upright, ({ width, height }) => {
        const sizes = planSizes({ width, height });
        for (const [n, size] of sizes.entries()) {
          expect(size.width).toBeGreaterThan(sizes[n - 1]?.width ?? 0);
          expect(size.width).toBeLessThanOrEqual(width);
          expect(size.height).toBeLessThanOrEqual(Math.max(1, height));
          expect(size.height).toBeLessThanOrEqual(3300);
          if (size.height > 1 && height * 2200 > width && size.height < 3300) {
            expect(Math.abs(size.height - (size.width * height) / width)).toBeLessThanOrEqual(0.5);
          }
        }
      }),
    );
  });

  it("give every place in the layout a file that is large enough and no more than twice too wide", () => {
    fc.assert(
      fc.property(fc.integer({ min: 320, max: 1100 }), fc.constantFrom(1, 2), (cssWidth, ratio) => {
        const needed = cssWidth * ratio;
        const taken = widthsOf(6000, 4000).find((width) => width >= needed) ?? 0;
        expect(taken).toBeGreaterThanOrEqual(needed);
        expect(taken).toBeLessThan(2 * needed);
      }),
    );
  });

  it("fall back on the one for a main photograph", () => {
    expect(fallbackWidth(planSizes({ width: 6000, height: 4000 }))).toBe(1100);
    expect(fallbackWidth(planSizes({ width: 1200, height: 800 }))).toBe(1200);
    expect(fallbackWidth(planSizes({ width: 500, height: 400 }))).toBe(500);
  });
});

describe("the formats", () => {
  it("are AVIF, WebP and JPEG, best first, by the media types of the registries", () => {
    // IANA, Media Types: image/avif, image/webp (RFC 9649), image/jpeg (RFC 2045).
    expect(encodingsAt(320).map(({ type, extension }) => [type, extension])).toEqual([
      ["image/avif", "avif"],
      ["image/webp", "webp"],
      ["image/jpeg", "jpg"],
    ]);
  });

  it("spend no more effort than 2 on AVIF, and less on what is large", () => {
    expect(encodingsAt(320)[0]?.options.effort).toBe(2);
    expect(encodingsAt(2200)[0]?.options.effort).toBe(1);
  });

  it("say in the key of the cache whatever changes an output", () => {
    for (const width of [320, 2200]) {
      for (const { options } of encodingsAt(width)) {
        for (const value of Object.values(options)) expect(settingsKey).toContain(JSON.stringify(value));
      }
    }
  });
});
