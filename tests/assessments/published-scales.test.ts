import { readFileSync } from "node:fs";
import { load } from "js-yaml";
import { describe, expect, it } from "vitest";
import type { Figure } from "../../shared/assessments/figure.ts";
import { assessClass, classOf } from "../../shared/assessments/rarity/scale-class.ts";
import type { Scale } from "../../shared/records/register.ts";

const scale = (id: string): Scale => {
  const raw = load(readFileSync(new URL(`../../schemas/scales/${id}.yaml`, import.meta.url), "utf8"));
  const { classes, ...rest } = raw as Scale;
  return { ...rest, id, classes: classes.map((each) => ({ ...each, id: String(each.id) })) };
};

// Sheldon (1958), Penny Whimsy, p. 44, prints R4 to R8; R3 to R1 stand there in words. The Universal Rarity Scale:
// Bowers, The Numismatist, June 1992; by pure doubling URS-8 would end with 128, and it ends with 125.
describe("the boundaries of the published scales", () => {
  it.each([
    [1, "r8"],
    [3, "r8"],
    [4, "r7"],
    [12, "r7"],
    [13, "r6"],
    [30, "r6"],
    [31, "r5"],
    [75, "r5"],
    [76, "r4"],
    [200, "r4"],
    [201, "r3-to-r1"],
  ])("Sheldon: %d known is %s", (known, id) => {
    expect(classOf(scale("sheldon"), known)).toBe(id);
  });

  it.each([
    [0, "urs-0"],
    [1, "urs-1"],
    [2, "urs-2"],
    [4, "urs-3"],
    [5, "urs-4"],
    [64, "urs-7"],
    [65, "urs-8"],
    [125, "urs-8"],
    [126, "urs-9"],
    [65_000, "urs-17"],
    [65_001, "urs-18"],
  ])("universal: %d known is %s", (known, id) => {
    expect(classOf(scale("universal"), known)).toBe(id);
  });

  it.each([
    ["sheldon", "r7", "r5"],
    ["universal", "urs-5", "urs-7"],
  ])("%s: 10 to 40 spans %s to %s", (id, low, high) => {
    expect(assessClass(scale(id), { low: 10, high: 40 } as Figure)).toEqual({ scale: id, low, high });
  });

  // The ends of an interval are seldom whole: each is classed as it is written, to the nearest whole number.
  it.each([
    [16.49, "urs-5"],
    [16.5, "urs-6"],
    [16.65, "urs-6"],
    [32.4, "urs-6"],
    [32.6, "urs-7"],
  ])("universal: an end of %d is %s", (end, id) => {
    expect(assessClass(scale("universal"), { low: end, high: end } as Figure)).toEqual({
      scale: "universal",
      low: id,
      high: id,
    });
  });

  it("has no class for an end that is not known, nor for any number where no scale is chosen", () => {
    expect(assessClass(scale("universal"), { low: null, high: null } as Figure)).toEqual({
      scale: "universal",
      low: null,
      high: null,
    });
    expect(assessClass(undefined, { low: 10, high: 40 } as Figure)).toBeNull();
  });

  it.each(["sheldon", "universal"])("%s has one class for every number, and none for two", (id) => {
    const { classes } = scale(id);
    const inOrder = [...classes].sort((a, b) => (a.low ?? 0) - (b.low ?? 0));
    inOrder.slice(1).forEach(({ low }, at) => {
      expect(low).toBe((inOrder[at]?.high ?? Number.NaN) + 1);
    });
  });
});
