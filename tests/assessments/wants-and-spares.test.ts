import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../shared/assessments/completeness.ts";
import { sparesOf, wantsOf } from "../../shared/assessments/completing.ts";
import { reallocate } from "../../shared/assessments/reallocation.ts";
import type { Item, PartLine } from "../../shared/records/item.ts";
import type { Level } from "../../shared/records/variant.ts";
import { line, part, variant } from "./properties/given.ts";
import { item } from "./properties/given-collection.ts";

const level = (id: string, needs: Partial<Level["needs"]>): Level => ({
  id,
  name: id,
  needs: { standing: [], parts: [], groups: [], ...needs },
});

// Weights 1 + 2 + 5 = 8 of the parts that count. No level needs the strap.
const reference = variant("a", {
  levels: [
    level("full", { standing: ["core", "issued", "consumable"] }),
    level("ready", { parts: ["hook", "oil"] }),
  ],
  parts: [
    part("hook", {
      quantity: 2,
      marks: ["{set}"],
      accepts: new Map([
        ["tin", 0.5],
        ["true", 1],
      ]),
    }),
    part("oil", { standing: "consumable", weight: 9 }),
    part("lens", { weight: 2 }),
    part("body", { standing: "core", weight: 5 }),
    part("strap", { standing: "optional" }),
  ],
});

const examined = (lines: Record<string, PartLine[]>, id = "one", more: Partial<Item> = {}) => {
  const one = item(id, { parts: new Map(Object.entries(lines)), ...more });
  return { item: one, completeness: assessCompleteness(reference, one) };
};
const has = (quantity: number, more: Partial<PartLine> = {}) => [line("present", { quantity, ...more })];
const lacks = [line("absent")];

describe("wanted", () => {
  const wants = (lines: Record<string, PartLine[]>) => wantsOf(reference, examined(lines));

  it("is what is gone, the most that it would add first, and last what is counted apart where a level needs it", () => {
    expect(wants({ hook: lacks, oil: lacks, lens: lacks, body: lacks, strap: lacks })).toEqual([
      { part: "body", units: 1, gain: 5 / 8, neededFor: ["full"] },
      { part: "lens", units: 1, gain: 2 / 8, neededFor: ["full"] },
      { part: "hook", units: 2, gain: 1 / 8, neededFor: ["full", "ready"] },
      { part: "oil", units: 1, gain: 0, neededFor: ["full", "ready"] },
    ]);
  });

  it("is nothing that substitutes make up for in full", () => {
    expect(wants({ hook: [...has(1), line("substitute", { model: "true", quantity: 2 })] })).toEqual([]);
    // By hand: the second place holds one of the two halves, and a right one adds the other half of it: 0.5 / 2 · 1 / 8.
    expect(wants({ hook: [...has(1), line("substitute", { model: "tin", quantity: 2 })] })).toMatchObject([
      { part: "hook", units: 1, gain: 1 / 32 },
    ]);
  });

  it("weighs more where something was never issued", () => {
    expect(wants({ hook: lacks, body: [line("not-issued")] })).toEqual([
      { part: "hook", units: 2, gain: 1 / 3, neededFor: ["full", "ready"] },
    ]);
  });

  it.each<[string, PartLine[], number, number]>([
    ["one of two", has(1, { rest: "absent" }), 1, 1 / 16],
    ["what stands in for it and does not count", [line("substitute")], 2, 1 / 8],
    ["what stands in for it and counts for a half", [line("substitute", { model: "tin" })], 2, 1 / 16],
    [
      "one gone, and one that stands in for a half",
      [line("substitute", { model: "tin" }), line("absent")],
      2,
      3 / 32,
    ],
    [
      "one there, and one that stands in for a half",
      [line("present"), line("substitute", { model: "tin" })],
      1,
      1 / 32,
    ],
    [
      "one that stands in for a half, and one that nobody looked for",
      [line("substitute", { model: "tin", quantity: 1 })],
      1,
      1 / 32,
    ],
    ["one there, and two that stand in", [line("present"), line("substitute", { quantity: 2 })], 1, 1 / 16],
    [
      "one that stands in for nothing, where the other counts in full",
      [line("substitute", { model: "true" }), line("substitute")],
      1,
      1 / 16,
    ],
    ["one never issued, and one gone", [line("not-issued"), line("absent")], 1, 1 / 8],
  ])("is %s", (_, lines, units, gain) => {
    const [want, ...others] = wants({ hook: lines });
    expect(others).toEqual([]);
    expect(want?.units).toBe(units);
    expect(want?.gain).toBeCloseTo(gain, 12);
  });

  it.each<[string, PartLine[] | undefined]>([
    ["is there", has(2)],
    ["nobody looked for", undefined],
    ["is not established", [line("unverified")]],
    ["has a substitute that counts in full", [line("substitute", { model: "true" })]],
    ["is there, though others of it are gone", [line("present", { quantity: 3 }), line("absent")]],
    ["was never issued", [line("not-issued")]],
  ])("is nothing that %s", (_, lines) => {
    expect(wants(lines ? { hook: lines } : {})).toEqual([]);
  });
});

describe("spare", () => {
  const spares = (lines: Record<string, PartLine[]>) => sparesOf(reference, examined(lines));

  it("is what is there beyond what the case needs, of parts that are sought", () => {
    expect(spares({ hook: has(5), oil: has(2), lens: has(1), body: lacks, strap: has(3) })).toEqual([
      { part: "hook", units: 3 },
      { part: "oil", units: 1 },
    ]);
  });

  it("is all of what was never issued with it", () => {
    expect(spares({ lens: [line("not-issued"), line("present")] })).toEqual([{ part: "lens", units: 1 }]);
  });

  it.each<[string, PartLine[], number]>([
    ["no more than is not of its set", [...has(3, { belongs: "set" }), line("present")], 1],
    ["nothing that is all of its set", has(4, { belongs: "set" }), 0],
    ["what is said to be spare", [...has(2), line("present", { belongs: "spare" })], 1],
    ["no more than it has beyond its need", [line("present", { belongs: "set" }), ...has(2)], 1],
    [
      "of lines without a quantity one unit each",
      [line("present", { belongs: "set" }), line("present", { belongs: "set" }), line("present")],
      1,
    ],
    ["what its set's absent one leaves", [line("absent", { quantity: 3, belongs: "set" }), ...has(3)], 1],
    [
      "no unit that is not established, nor one that stands in",
      [line("unverified", { quantity: 3 }), line("substitute", { quantity: 3 })],
      0,
    ],
    ["nothing where a line speaks for all that were issued", [line("present", { belongs: "set" })], 0],
  ])("is %s", (_, lines, units) => {
    expect(spares({ hook: lines })).toEqual(units === 0 ? [] : [{ part: "hook", units }]);
  });
});

describe("spare units go where they gain most", () => {
  const moves = (examples: Record<string, Record<string, PartLine[]>>) =>
    reallocate(
      reference,
      Object.entries(examples).map(([id, lines]) => examined(lines, id)),
    );

  it("in the order of who gets them, what it is and who gives", () => {
    const found = moves({
      west: { hook: lacks, lens: lacks, body: has(1) },
      donor: { hook: has(3), lens: has(3) },
      east: { hook: lacks, lens: lacks, body: has(1) },
      another: { hook: has(5) },
      left: { body: lacks },
    });
    expect(found?.moves.map(({ to, part: id, units }) => `${to} ${id} ${units}`).join()).toMatch(
      /^east hook \d(,east hook \d)?,east lens 1,west hook \d(,west hook \d)?,west lens 1$/,
    );
    for (const { to, part: id, from } of found?.moves ?? []) {
      const others = found?.moves.filter((each) => each.to === to && each.part === id) ?? [];
      expect(others.map((each) => each.from)).toEqual(others.map((each) => each.from).sort());
      expect(["another", "donor"]).toContain(from);
    }
    // Each has its body, 5 of 8, and is made whole by a lens and two hooks.
    expect(found?.items).toEqual([
      { item: "west", before: 5 / 8, after: 1 },
      { item: "east", before: 5 / 8, after: 1 },
    ]);
    expect(found?.gain).toBeCloseTo(6 / 8, 12);
    expect(found?.variant).toBe("a");
  });

  it("of what is counted apart as well, where a level needs it: that adds nothing", () => {
    expect(moves({ to: { oil: lacks, strap: lacks }, from: { oil: has(4), strap: has(4) } })).toEqual({
      variant: "a",
      moves: [{ part: "oil", from: "from", to: "to", units: 1 }],
      gain: 0,
      items: [],
    });
  });

  it("as one move where several units go the same way", () => {
    expect(moves({ from: { hook: has(4) }, to: { hook: lacks } })).toEqual({
      variant: "a",
      moves: [{ part: "hook", from: "from", to: "to", units: 2 }],
      gain: 1 / 8,
      items: [{ item: "to", before: 0, after: 1 / 8 }],
    });
  });

  it("from whoever has them, so far as each has any", () => {
    expect(moves({ b: { hook: has(3) }, a: { hook: has(3) }, to: { hook: lacks } })?.moves).toEqual([
      { part: "hook", from: "a", to: "to", units: 1 },
      { part: "hook", from: "b", to: "to", units: 1 },
    ]);
    expect(moves({ b: { hook: has(3) }, to: { hook: lacks } })).toMatchObject({
      moves: [{ part: "hook", from: "b", to: "to", units: 1 }],
      gain: 1 / 16,
      items: [{ item: "to", before: 0, after: 1 / 16 }],
    });
  });

  it("and first to whom one unit is worth more", () => {
    // Of the first the lens and body were never issued: a hook is half of it.
    const found = moves({
      small: { hook: has(1, { rest: "absent" }), lens: [line("not-issued")], body: [line("not-issued")] },
      from: { hook: has(3) },
      large: { hook: has(1, { rest: "absent" }) },
    });
    expect(found?.moves).toEqual([{ part: "hook", from: "from", to: "small", units: 1 }]);
    expect(found?.items).toEqual([{ item: "small", before: 0.5, after: 1 }]);
  });

  it("but nothing goes where it would gain nothing, where none is spare, or from a case to itself", () => {
    const asGood = [line("substitute", { model: "true", quantity: 4 })];
    expect(moves({ to: { hook: asGood }, from: { hook: has(4) } })).toBeNull();
    expect(moves({ to: { hook: lacks }, from: { hook: has(2) } })).toBeNull();
    expect(moves({ to: { lens: lacks }, from: { hook: has(4) } })).toBeNull();
    expect(moves({ to: { strap: lacks }, from: { strap: has(4) } })).toBeNull();
    expect(moves({ both: { hook: [line("present", { quantity: 3 }), line("substitute")] } })).toBeNull();
    expect(moves({})).toBeNull();
  });

  it("and what lacks nothing any more is whole, to the last bit", () => {
    // 3 + 6 + 1 of 10. Added to what was there, (3 + 6 + 2/3)/10 + (1/3)/10, it is a rounding error short of that.
    const lamp = variant("lamp", {
      parts: [
        part("box", { weight: 3 }),
        part("lamp", { weight: 6 }),
        part("lens", { quantity: 3, weight: 1 }),
      ],
    });
    const given = (id: string, lens: number) => {
      const parts = new Map(
        Object.entries({ box: has(1), lamp: has(1), lens: has(lens, { rest: "absent" }) }),
      );
      const one = item(id, { parts });
      return { item: one, completeness: assessCompleteness(lamp, one) };
    };
    expect(reallocate(lamp, [given("to", 2), given("from", 4)])?.items).toMatchObject([{ after: 1 }]);
  });

  it("first in the place of what stands in for it and counts for least", () => {
    const mixed = [line("substitute", { model: "tin" }), line("substitute", { model: "jar" })];
    // The jar counts for nothing and the tin for a half of a unit: 0.5 of 2 becomes 1.5 of 2.
    expect(moves({ to: { hook: mixed }, from: { hook: has(3) } })).toMatchObject({
      moves: [{ units: 1 }],
      gain: 1 / 16,
      items: [{ before: 1 / 32, after: 3 / 32 }],
    });
  });

  it("instead of what only stands in for it", () => {
    const halves = [line("substitute", { model: "tin" })];
    // Each takes the place of one that counts for a half: 1 of 2 units becomes 2 of 2.
    expect(moves({ to: { hook: halves }, from: { hook: has(4) } })).toMatchObject({
      moves: [{ units: 2 }],
      gain: 1 / 16,
      items: [{ before: 1 / 16, after: 1 / 8 }],
    });
  });
});

describe("a spare unit that bears the number of another set", () => {
  const sent = (sets: Record<string, Record<string, PartLine[]>>) =>
    reallocate(
      reference,
      Object.entries(sets).map(([set, lines]) => examined(lines, `no-${set.toLowerCase()}`, { set })),
    )?.moves.map(({ from, to, units }) => `${from} ${to} ${units}`);
  const marked = (quantity: number, ...marks: string[]) => line("present", { quantity, marks });
  const hook = (...lines: PartLine[]) => ({ hook: lines });

  it("goes to that set, though another would gain as much or more", () => {
    const giver = hook(marked(2, "7"), marked(1, "9"));
    expect(sent({ 7: giver, 8: hook(...lacks), 9: hook(...lacks) })).toEqual(["no-7 no-9 1"]);
    const small = { lens: [line("not-issued")], body: [line("not-issued")] };
    expect(sent({ 7: giver, 8: { ...hook(...lacks), ...small }, 9: hook(...lacks) })).toEqual([
      "no-7 no-9 1",
    ]);
  });

  it("goes where it gains most if that set does not want it, or is not here", () => {
    const giver = hook(marked(2, "7"), marked(1, "9"));
    expect(sent({ 7: giver, 8: hook(...lacks), 9: hook(...has(2)) })).toEqual(["no-7 no-8 1"]);
    expect(sent({ 7: giver, 8: hook(...lacks) })).toEqual(["no-7 no-8 1"]);
  });

  it("goes there first, and the others after it", () => {
    // Of five two are needed: one of the three others bears 9, and is the first to go.
    const giver = hook(marked(4, "7"), marked(1, "9"));
    expect(sent({ 7: giver, 8: hook(...lacks), 9: hook(...lacks) })).toEqual(["no-7 no-8 2", "no-7 no-9 1"]);
  });

  it("is no more than the case can spare, nor one that belongs to it, or bears its number too", () => {
    const few = hook(marked(1, "7"), marked(2, "9"));
    expect(sent({ 7: few, 8: hook(...lacks), 9: hook(...lacks) })).toEqual(["no-7 no-9 1"]);
    const tied = hook(...has(2), line("present", { quantity: 1, marks: ["9"], belongs: "set" }));
    expect(sent({ 7: tied, 8: hook(...lacks), 9: hook(...lacks) })).toEqual(["no-7 no-8 1"]);
    // A small part bears the last figures of a set alone, which E-90 and D-90 share.
    const both = hook(marked(3, "90"));
    expect(sent({ "E-90": both, "A-1": hook(...lacks), "D-90": hook(...lacks) })).toEqual([
      "no-e-90 no-a-1 1",
    ]);
  });
});
