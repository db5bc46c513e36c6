import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { marksApart, type Point } from "../../shared/plots/drawing/marks-apart.ts";

const room = { width: 288, height: 192, distance: 27 };

const inRoom = fc.record({
  x: fc.double({ min: 0, max: room.width, noNaN: true }),
  y: fc.double({ min: 0, max: room.height, noNaN: true }),
});
/** On a coarse grid, so that many fall on one another. */
const onGrid = fc.record({
  x: fc.integer({ min: 0, max: 4 }).map((n) => n * 72),
  y: fc.integer({ min: 0, max: 4 }).map((n) => n * 48),
});
const crowds = fc.oneof(
  fc.array(inRoom, { maxLength: 24 }),
  fc.array(onGrid, { maxLength: 24 }),
  fc
    .tuple(inRoom, fc.integer({ min: 1, max: 24 }))
    .map(([point, n]) => Array.from({ length: n }, () => point)),
);

const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
const pairs = <Value>(list: readonly Value[]): (readonly [Value, Value])[] =>
  list.flatMap((one, at) => list.slice(at + 1).map((other) => [one, other] as const));

// Properties: what a reader of the photograph relies on. No value of theirs comes from the code under test.
describe("marks on a photograph", () => {
  it("never hide one another, and none leaves the picture", () => {
    fc.assert(
      fc.property(crowds, (points) => {
        const placed = marksApart(points, room);
        expect(placed).toHaveLength(points.length);
        for (const [one, other] of pairs(placed)) {
          expect(apart(one, other)).toBeGreaterThanOrEqual(room.distance - 1e-9);
        }
        for (const { x, y } of placed) {
          const edge = Math.min(x, y, room.width - x, room.height - y);
          expect(edge).toBeGreaterThanOrEqual(room.distance / 2 - 1e-9);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("stand on their points where nothing presses on them", () => {
    fc.assert(
      fc.property(fc.array(inRoom, { maxLength: 12 }), (points) => {
        const free = (point: Point) =>
          Math.min(point.x, point.y, room.width - point.x, room.height - point.y) >= room.distance / 2;
        fc.pre(points.every(free) && pairs(points).every(([a, b]) => apart(a, b) >= room.distance));
        expect(marksApart(points, room)).toEqual(points);
      }),
    );
  });

  it("are moved by no more than a crowd of their number takes up", () => {
    fc.assert(
      fc.property(crowds, (points) => {
        const placed = marksApart(points, room);
        points.forEach((point, at) => {
          const place = placed[at];
          // Loose: a disc that holds as many marks as there are, packed half as densely as discs can be (0.9069).
          const reach = room.distance * (1 + Math.sqrt(points.length / 0.45));
          expect(apart(point, place ?? { x: -1e9, y: 0 })).toBeLessThanOrEqual(reach);
        });
      }),
    );
  });

  it("no two of the ways from a spot to its mark cross", () => {
    /** How far a point lies beside the line through two others; by the sign, on which side. */
    const beside = (a: Point, b: Point, c: Point) =>
      ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / Math.max(apart(a, b), 1e-12);
    const split = (a: Point, b: Point, c: Point, d: Point) => {
      const [one, other] = [beside(a, b, c), beside(a, b, d)];
      // By less than a hundredth of a pixel nobody sees a crossing, and rounding makes and unmakes it.
      return one * other < 0 && Math.min(Math.abs(one), Math.abs(other)) > 0.01;
    };
    const cross = (a: Point, b: Point, c: Point, d: Point) => split(a, b, c, d) && split(c, d, a, b);
    fc.assert(
      fc.property(crowds, (points) => {
        const ways = marksApart(points, room).map((place, at) => [points[at] ?? place, place] as const);
        for (const [[a, b], [c, d]] of pairs(ways)) expect(cross(a, b, c, d)).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  it("come out the same every time", () => {
    fc.assert(
      fc.property(crowds, (points) => {
        expect(marksApart(points, room)).toEqual(
          marksApart(
            points.map((point) => ({ ...point })),
            room,
          ),
        );
      }),
    );
  });

  it("keep the same places in a picture of another size, in proportion", () => {
    fc.assert(
      fc.property(fc.array(onGrid, { maxLength: 12 }), (points) => {
        const twice = (point: Point) => ({ x: 2 * point.x, y: 2 * point.y });
        const large = marksApart(points.map(twice), { width: 576, height: 384, distance: 54 });
        marksApart(points, room)
          .map(twice)
          .forEach(({ x, y }, at) => {
            expect(large[at]?.x).toBeCloseTo(x, 6);
            expect(large[at]?.y).toBeCloseTo(y, 6);
          });
      }),
    );
  });

  it("two on one spot part to either side of it, each by half the distance", () => {
    const spot = { x: 144, y: 96 };
    const [one, other] = marksApart([spot, spot], room);
    if (!one || !other) throw new Error("two marks");
    expect((one.x + other.x) / 2).toBeCloseTo(spot.x, 6);
    expect((one.y + other.y) / 2).toBeCloseTo(spot.y, 6);
    expect(apart(one, other)).toBeCloseTo(room.distance, 1);
  });

  it("come closer together, alike, where the picture is too small for all", () => {
    const points = Array.from({ length: 60 }, () => ({ x: 20, y: 20 }));
    const placed = marksApart(points, { width: 100, height: 60, distance: 27 });
    expect(placed).toHaveLength(60);
    const closest = Math.min(...pairs(placed).map(([a, b]) => apart(a, b)));
    // Sixty discs in 100 by 60: one to a square of 10 would just fill it.
    expect(closest).toBeGreaterThan(5);
    expect(closest).toBeLessThan(12);
  });

  it("a picture without any has none, and one of a single pixel ends too", () => {
    expect(marksApart([], room)).toEqual([]);
    expect(marksApart([{ x: 0.5, y: 0.5 }], { width: 1, height: 1, distance: 27 })).toEqual([
      { x: 0.5, y: 0.5 },
    ]);
  });
});
