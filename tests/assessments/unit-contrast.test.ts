import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ComparedUnits, contrastUnits, contrastValues } from "../../shared/assessments/unit-contrast.ts";

type Counts = Partial<Omit<ComparedUnits, "share">>;

/** Of a part of which so many were issued: what was found, its share as section 1 of the figures counts it. */
const found = (counts: Counts): ComparedUnits => {
  const all = {
    present: 0,
    substitute: 0,
    unverified: 0,
    absent: 0,
    unexamined: 0,
    notIssued: 0,
    models: [],
    marks: null,
    dating: null,
    ...counts,
  };
  const { present, substitute, unverified, absent, unexamined } = all;
  const expected = present + substitute + unverified + absent + unexamined;
  return {
    ...all,
    share:
      expected === 0
        ? null
        : { low: present / expected, high: (present + substitute + unverified + unexamined) / expected },
  };
};

const present = found({ present: 1 });
const absent = found({ absent: 1 });
const unexamined = found({ unexamined: 1 });

describe("two examples are told apart", () => {
  // By hand: what is unknown is neither counted nor struck out.
  it.each<[string, ComparedUnits, ComparedUnits, string]>([
    ["there and there", present, present, "alike"],
    ["there and gone", present, absent, "differs"],
    ["there and not looked at", present, unexamined, "unknown"],
    ["not looked at, both", unexamined, unexamined, "unknown"],
    ["there and not established to be right", present, found({ unverified: 1 }), "differs"],
    ["gone and never issued", absent, found({ notIssued: 1 }), "differs"],
    ["never issued, both", found({ notIssued: 1 }), found({ notIssued: 1 }), "alike"],
    ["four of four and three of four", found({ present: 4 }), found({ present: 3, absent: 1 }), "differs"],
    [
      "three of four with one not looked at, and four",
      found({ present: 3, unexamined: 1 }),
      found({ present: 4 }),
      "unknown",
    ],
    [
      "two of four gone for certain, and three there for certain",
      found({ present: 1, absent: 2, unexamined: 1 }),
      found({ present: 3, unexamined: 1 }),
      "differs",
    ],
    [
      "substitutes of one model and of another",
      found({ substitute: 1, models: ["tin"] }),
      found({ substitute: 1, models: ["card"] }),
      "differs",
    ],
    [
      "substitutes of the same two models, found in another order",
      found({ substitute: 2, models: ["tin", "card"] }),
      found({ substitute: 2, models: ["card", "tin"] }),
      "alike",
    ],
    [
      "numbers that match and another set's",
      found({ present: 1, marks: "matching" }),
      found({ present: 1, marks: "other-set" }),
      "differs",
    ],
    ["of its time and later", present, found({ present: 1, dating: "later" }), "differs"],
  ])("%s", (_, first, second, expected) => {
    expect(contrastUnits([first, second])).toBe(expected);
    expect(contrastUnits([second, first])).toBe(expected);
  });

  it("by a part that the variant of one has not got", () =>
    expect(contrastUnits([present, null])).toBe("differs"));
  it("by no part that neither variant has got", () => expect(contrastUnits([null, null])).toBe("alike"));

  const units = fc
    .record({
      present: fc.nat(3),
      substitute: fc.nat(2),
      unverified: fc.nat(2),
      absent: fc.nat(3),
      unexamined: fc.nat(2),
      notIssued: fc.nat(1),
    })
    .map(found);

  it("never from itself", () =>
    fc.assert(
      fc.property(units, (each) => {
        expect(contrastUnits([each, each])).not.toBe("differs");
      }),
    ));

  it("in whatever order they stand", () =>
    fc.assert(
      fc.property(fc.array(units, { minLength: 2, maxLength: 5 }), (some) => {
        expect(contrastUnits([...some].reverse())).toBe(contrastUnits(some));
      }),
    ));

  it("still, when another is set beside them", () =>
    fc.assert(
      fc.property(fc.array(units, { minLength: 2, maxLength: 4 }), units, (some, another) => {
        if (contrastUnits(some) === "differs") expect(contrastUnits([...some, another])).toBe("differs");
      }),
    ));
});

describe("features are told apart", () => {
  it.each<[readonly (string | null)[], string]>([
    [["brass", "brass"], "alike"],
    [["brass", "steel"], "differs"],
    [["brass", null], "unknown"],
    [[null, null], "unknown"],
    [["brass", null, "steel"], "differs"],
  ])("%j: %s", (values, expected) => expect(contrastValues(values)).toBe(expected));
});
