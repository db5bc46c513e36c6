import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Attribute, type AttributeValue, gower } from "../../shared/statistics/gower.ts";
import { reference } from "./reference.ts";

const nominal: Attribute = { kind: "nominal" };

describe("gower", () => {
  const { flower, gaps } = reference.gower;
  const rows = flower.nominal.map((names, index): AttributeValue[] => [
    ...names,
    ...(flower.numeric[index] ?? []),
  ]);
  const attributes = [
    ...[0, 1, 2, 3].map(() => nominal),
    ...flower.ranges.map((range): Attribute => ({ kind: "numeric", range })),
  ];

  it("agrees with R's daisy on every pair of the flower table", () => {
    expect(rows).toHaveLength(18);
    rows.forEach((a, i) => {
      rows.forEach((b, j) => {
        const { likeness, compared } = gower(a, b, attributes);
        expect(likeness).toBeCloseTo(flower.likeness[i]?.[j] as number, 12);
        expect(compared).toBe(8);
      });
    });
  });

  it("has Kaufman & Rousseeuw's dissimilarities of the first three flowers", () => {
    // d12 0.887541, d13 0.527247, d23 0.514706 [R].
    const apart = (i: number, j: number) =>
      1 - (gower(rows[i] ?? [], rows[j] ?? [], attributes).likeness as number);
    expect(apart(0, 1)).toBeCloseTo(0.887541, 6);
    expect(apart(0, 2)).toBeCloseTo(0.527247, 6);
    expect(apart(1, 2)).toBeCloseTo(0.514706, 6);
  });

  it("leaves what is not known out of both sums", () => {
    // a nominal with a gap, b nominal, c numeric of range 40: d12 0.416667 … d34 0.25 [R].
    const table: AttributeValue[][] = [
      ["1", "red", 10],
      ["0", "red", 20],
      ["1", "blue", 30],
      [null, "blue", 50],
    ];
    const columns: Attribute[] = [nominal, nominal, { kind: "numeric", range: 40 }];
    table.forEach((a, i) => {
      table.forEach((b, j) => {
        const found = gower(a, b, columns);
        expect(found.likeness).toBeCloseTo(gaps.likeness[i]?.[j] as number, 12);
        expect(found.compared).toBe(i === 3 || j === 3 ? 2 : 3);
      });
    });
  });

  it("says so where nothing can be compared", () => {
    expect(gower([], [], [])).toEqual({ likeness: null, compared: 0 });
    expect(gower([null, "a"], ["b", null], [nominal, nominal])).toEqual({ likeness: null, compared: 0 });
  });

  it("takes a range of 0 for a column of one value", () => {
    expect(gower([7], [7], [{ kind: "numeric", range: 0 }])).toEqual({ likeness: 1, compared: 1 });
    expect(() => gower([7], [8], [{ kind: "numeric", range: 0 }])).toThrow(RangeError);
  });

  it("compares truth values, and does not take the text 1 for the number 1", () => {
    expect(gower([true, 1], [true, "1"], [nominal, nominal])).toEqual({ likeness: 0.5, compared: 2 });
  });

  it("is symmetric, 1 for a thing and itself, and within 0 and 1", () => {
    const value = fc.option(fc.integer({ min: 0, max: 9 }), { nil: null });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value, fc.boolean()), { maxLength: 8 }), (columns) => {
        const kinds = columns.map(
          ([, , numeric]): Attribute => (numeric ? { kind: "numeric", range: 9 } : nominal),
        );
        const a = columns.map(([x]) => x);
        const b = columns.map(([, y]) => y);
        const found = gower(a, b, kinds);
        expect(gower(b, a, kinds)).toEqual(found);
        if (found.likeness !== null) {
          expect(found.likeness).toBeGreaterThanOrEqual(0);
          expect(found.likeness).toBeLessThanOrEqual(1 + 1e-12);
        }
        const self = gower(a, a, kinds);
        expect(self.likeness === null || Math.abs(self.likeness - 1) < 1e-12).toBe(true);
      }),
    );
  });

  it.each<[AttributeValue[], AttributeValue[], Attribute[], string]>([
    [["a"], [], [nominal], "Found 0 values; expected one for each of 1 attributes."],
    [["a", "b"], ["a"], [nominal], "Found 2 values; expected one for each of 1 attributes."],
    [[1], [2], [{ kind: "numeric", range: -1 }], "Found range = -1; expected a finite number of at least 0."],
    [
      [1],
      [2],
      [{ kind: "numeric", range: Infinity }],
      "Found range = Infinity; expected a finite number of at least 0.",
    ],
    [
      ["1"],
      [2],
      [{ kind: "numeric", range: 5 }],
      'Found "1" in a numeric attribute; expected a finite number.',
    ],
    [
      [1],
      [Infinity],
      [{ kind: "numeric", range: 5 }],
      "Found null in a numeric attribute; expected a finite number.",
    ],
    [
      [1],
      [7],
      [{ kind: "numeric", range: 5 }],
      "Found values 1 and 7; expected them no further apart than the range 5.",
    ],
  ])("refuses %j and %j", (first, second, columns, message) => {
    expect(() => gower(first, second, columns)).toThrow(new RangeError(message));
  });

  it("takes values that lie exactly the range apart", () => {
    expect(gower([1], [6], [{ kind: "numeric", range: 5 }])).toEqual({ likeness: 0, compared: 1 });
  });
});
