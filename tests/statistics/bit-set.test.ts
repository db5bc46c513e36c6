import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addBit,
  bitSet,
  countCommon,
  difference,
  hasBit,
  intersection,
  isEmpty,
  isSubset,
  membersOf,
  removeBit,
} from "../../shared/statistics/bit-set.ts";

const SIZE = 100;
const members = fc.uniqueArray(fc.integer({ min: 0, max: SIZE - 1 }));

describe("a bit set", () => {
  it("answers as a Set of numbers does", () => {
    fc.assert(
      fc.property(members, members, fc.integer({ min: 0, max: SIZE - 1 }), (a, b, one) => {
        const [left, right] = [bitSet(SIZE, a), bitSet(SIZE, b)];
        const ascending = (numbers: number[]) => numbers.toSorted((x, y) => x - y);
        expect(membersOf(left)).toEqual(ascending(a));
        expect(membersOf(intersection(left, right))).toEqual(
          ascending(a.filter((member) => b.includes(member))),
        );
        expect(membersOf(difference(left, right))).toEqual(
          ascending(a.filter((member) => !b.includes(member))),
        );
        expect(countCommon(left, right)).toBe(a.filter((member) => b.includes(member)).length);
        expect(isSubset(left, right)).toBe(a.every((member) => b.includes(member)));
        expect(isEmpty(left)).toBe(a.length === 0);
        expect(hasBit(left, one)).toBe(a.includes(one));
        addBit(left, one);
        expect(membersOf(left)).toEqual(ascending([...new Set([...a, one])]));
        removeBit(left, one);
        expect(membersOf(left)).toEqual(ascending(a.filter((member) => member !== one)));
      }),
    );
  });

  it("holds the last bit of a word, and of the last word", () => {
    const all = bitSet(
      64,
      Array.from({ length: 64 }, (_, index) => index),
    );
    expect(all).toHaveLength(2);
    expect(countCommon(all, all)).toBe(64);
    expect(membersOf(bitSet(64, [31, 32, 63]))).toEqual([31, 32, 63]);
    expect(bitSet(65)).toHaveLength(3);
    expect(bitSet(0)).toHaveLength(0);
  });
});
