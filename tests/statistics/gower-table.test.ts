import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Attribute, type AttributeValue, gower } from "../../shared/statistics/gower.ts";
import { gowerTable } from "../../shared/statistics/gower-table.ts";
import { reference } from "./reference.ts";

const nominal: Attribute = { kind: "nominal" };
const numeric: Attribute = { kind: "numeric", range: 1 };

describe("gowerTable", () => {
  it("agrees with R's daisy on every pair of the flower table", () => {
    const { flower } = reference.gower;
    const rows = flower.nominal.map((names, index): AttributeValue[] => [
      ...names,
      ...(flower.numeric[index] ?? []),
    ]);
    const attributes = [
      ...[0, 1, 2, 3].map(() => nominal),
      ...flower.ranges.map((range): Attribute => ({ kind: "numeric", range })),
    ];
    const likenesses = gowerTable(rows, attributes);
    rows.forEach((row, i) => {
      likenesses(row).forEach(({ likeness, compared }, j) => {
        expect(likeness).toBeCloseTo(flower.likeness[i]?.[j] as number, 12);
        expect(compared).toBe(8);
      });
    });
  });

  it("leaves what is not known out of both sums, as R's daisy does", () => {
    const table: AttributeValue[][] = [
      ["1", "red", 10],
      ["0", "red", 20],
      ["1", "blue", 30],
      [null, "blue", 50],
    ];
    const likenesses = gowerTable(table, [nominal, nominal, { kind: "numeric", range: 40 }]);
    table.forEach((row, i) => {
      likenesses(row).forEach(({ likeness }, j) => {
        expect(likeness).toBeCloseTo(reference.gower.gaps.likeness[i]?.[j] as number, 12);
      });
    });
  });

  // `gower` is held against R by itself; the table has to give the same number to the last bit, or equals would part.
  it("gives what gower gives, of rows in the table and of one that is not, with more attributes than a word has bits", () => {
    const share = fc.constantFrom(0, 1, 0.5, 1 / 3, 2 / 3, 0.1, null);
    const name = fc.constantFrom("a", "b", "c", true, 1, "1", null);
    const row = fc.tuple(
      fc.array(name, { minLength: 20, maxLength: 20 }),
      fc.array(share, { minLength: 20, maxLength: 20 }),
    );
    const attributes = [
      ...Array.from({ length: 20 }, () => nominal),
      ...Array.from({ length: 20 }, () => numeric),
    ];
    fc.assert(
      fc.property(fc.array(row, { maxLength: 6 }), row, (rows, one) => {
        const table = rows.map((each) => each.flat());
        const likenesses = gowerTable(table, attributes);
        for (const each of [one.flat(), ...table])
          expect(likenesses(each)).toEqual(table.map((other) => gower(each, other, attributes)));
      }),
    );
  });

  it("takes a range of 0 for a column of one value", () => {
    const still: Attribute = { kind: "numeric", range: 0 };
    expect(gowerTable([[7], [null]], [still])([7])).toEqual([
      { likeness: 1, compared: 1 },
      { likeness: null, compared: 0 },
    ]);
    expect(() => gowerTable([[7]], [still])([8])).toThrow(RangeError);
  });

  it.each<[AttributeValue[], AttributeValue[], Attribute[], string]>([
    [["a"], [], [nominal], "Found 0 values; expected one for each of 1 attributes."],
    [["a", "b"], ["a"], [nominal], "Found 2 values; expected one for each of 1 attributes."],
    [[1], [2], [{ kind: "numeric", range: -1 }], "Found range = -1; expected a finite number of at least 0."],
    [
      [0],
      [0],
      [{ kind: "numeric", range: Infinity }],
      "Found range = Infinity; expected a finite number of at least 0.",
    ],
    [["0"], [0], [numeric], 'Found "0" in a numeric attribute; expected a finite number.'],
    [[1], [2.5], [numeric], "Found values 2.5 and 1; expected them no further apart than the range 1."],
  ])("throws on %j and %j by %j", (row, other, attributes, message) => {
    expect(() => gowerTable([row], attributes)(other)).toThrow(new RangeError(message));
  });
});
