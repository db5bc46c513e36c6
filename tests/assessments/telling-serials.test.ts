import { describe, expect, it } from "vitest";
import { assessFamilyKey } from "../../shared/assessments/family-key.ts";
import { assessIdentification } from "../../shared/assessments/identification.ts";
import { areToldBySerial } from "../../shared/assessments/telling-serials.ts";
import type { SerialRange } from "../../shared/records/serial.ts";
import { feature, range, variant } from "./properties/given.ts";

const bearing = (...ranges: Partial<SerialRange>[]) => ({ serials: ranges.map(range) });

describe("a serial alone tells variants apart where none of them shares any with another", () => {
  // Of each range, what the first and the last serial may be; an end that nobody knows may lie anywhere.
  it.each<[string, Partial<SerialRange>[], Partial<SerialRange>[], boolean]>([
    ["one after the other", [{ prefix: "Q", from: 1, to: 240 }], [{ prefix: "Q", from: 241 }], true],
    ["one number in both", [{ prefix: "Q", from: 1, to: 241 }], [{ prefix: "Q", from: 241 }], false],
    ["one without an end", [{ prefix: "Q", from: 1 }], [{ prefix: "Q", from: 241, to: 600 }], false],
    ["one without a beginning", [{ prefix: "Q", to: 240 }], [{ prefix: "Q", from: 241 }], true],
    ["one of which only the letter is known", [{ prefix: "Q" }], [{ prefix: "Q", from: 241 }], false],
    ["other letters", [{ prefix: "Q", from: 1 }], [{ prefix: "R", from: 1 }], true],
    ["the same letter, written otherwise", [{ prefix: "Q-", from: 1 }], [{ prefix: "q", from: 1 }], false],
    ["letters, and none", [{ prefix: "Q", from: 1 }], [{ from: 1 }], true],
    // 1 before 23 is 123.
    ["a prefix that reads as a number", [{ prefix: "1", from: 1 }], [{ from: 100, to: 200 }], false],
    [
      "the second of several",
      [
        { from: 1, to: 9 },
        { from: 30, to: 39 },
      ],
      [{ from: 35, to: 50 }],
      false,
    ],
    ["no range of the one", [], [{ from: 1, to: 9 }], false],
  ])("%s", (_, one, other, told) => {
    expect(areToldBySerial([bearing(...one), bearing(...other)])).toBe(told);
    expect(areToldBySerial([bearing(...other), bearing(...one)])).toBe(told);
  });

  it("which takes two, and each two of them", () => {
    expect(areToldBySerial([bearing({ from: 1 })])).toBe(false);
    const [one, two] = [bearing({ from: 1, to: 9 }), bearing({ from: 10, to: 19 })];
    expect(areToldBySerial([one, two, bearing({ from: 20 })])).toBe(true);
    expect(areToldBySerial([one, two, bearing({ from: 19 })])).toBe(false);
  });
});

describe("what is said of it", () => {
  const features = new Map([["lid", feature("lid", ["flat", "domed"], 1)]]);
  const variants = [
    variant("a", { features: new Map([["lid", ["flat"]]]), serials: [range({ from: 1, to: 9 })] }),
    variant("b", { features: new Map([["lid", ["flat", "domed"]]]), serials: [range({ from: 10 })] }),
  ];
  const next = (serial: string | undefined, ...lid: string[]) =>
    assessIdentification(
      { variant: "a", serial, features: new Map(lid.map((value) => ["lid", value])) },
      variants,
      features,
    ).lookNext;

  it("is first among what to look at next, where none is recorded and several variants remain", () => {
    expect(next(undefined)).toEqual(["serial", "lid"]);
    // A flat lid is found with both, so that only the serial is left to look at.
    expect(next(undefined, "flat")).toEqual(["serial"]);
    expect(next("7")).toEqual([]);
    expect(next("1?")).toEqual(["lid"]);
  });

  it("stands with the key of the family", () => {
    expect(assessFamilyKey(features, variants).bySerial).toBe(true);
    expect(assessFamilyKey(features, variants.slice(1)).bySerial).toBe(false);
  });
});
