import { describe, expect, it } from "vitest";
import { assessCompleteness, findPart } from "../../shared/assessments/completeness.ts";
import type { PartLine } from "../../shared/records/item.ts";
import type { Level, Part } from "../../shared/records/variant.ts";
import { line, part, variant } from "./properties/given.ts";

const four = part("shade", { quantity: 4, accepts: new Map([["tin", 0.5]]) });

/** All that is found is nothing but what is said. */
const units = (more: Partial<ReturnType<typeof findPart>>) => ({
  part: "shade",
  expected: 4,
  present: 0,
  substitute: 0,
  credits: [],
  unverified: 0,
  absent: 0,
  unexamined: 0,
  notIssued: 0,
  surplus: 0,
  ...more,
});

// By hand: a single line without a quantity speaks for all units, of several each speaks for one; `rest` speaks for what no line has spoken for.
describe("what is written of a part issued in four", () => {
  it.each<[string, PartLine[], Partial<ReturnType<typeof findPart>>]>([
    ["nothing", [], { unexamined: 4, share: { low: 0, high: 1 } }],
    ["present", [line("present")], { present: 4, share: { low: 1, high: 1 } }],
    ["absent", [line("absent")], { absent: 4, share: { low: 0, high: 0 } }],
    ["unverified", [line("unverified")], { unverified: 4, share: { low: 0, high: 1 } }],
    ["not issued", [line("not-issued")], { expected: 0, notIssued: 4, share: null }],
    [
      "one not issued, and two there",
      [line("not-issued"), line("present", { quantity: 2 })],
      { expected: 3, notIssued: 1, present: 2, unexamined: 1, share: { low: 2 / 3, high: 1 } },
    ],
    [
      "more not issued than there are",
      [line("not-issued", { quantity: 6 })],
      { expected: 0, notIssued: 6, share: null },
    ],
    [
      "a substitute that counts for a half",
      [line("substitute", { model: "tin" })],
      { substitute: 4, credits: [0.5, 0.5, 0.5, 0.5], share: { low: 0.5, high: 0.5 } },
    ],
    [
      "a substitute of a strange model, and one of none",
      [line("substitute", { model: "jar" }), line("substitute"), line("present", { quantity: 2 })],
      // The jar counts for nothing; the other may be of tin: (2 + 0.5) / 4.
      { substitute: 2, credits: [0, 0], present: 2, share: { low: 0.5, high: 0.625 } },
    ],
    [
      "three there, the rest of a model that nobody noted",
      [line("present", { quantity: 3, rest: "substitute" })],
      // (3 + 0.5) / 4.
      { present: 3, substitute: 1, credits: [0], share: { low: 0.75, high: 0.875 } },
    ],
    [
      "a model of something that is no substitute",
      [line("unverified", { model: "tin" })],
      { unverified: 4, share: { low: 0, high: 1 } },
    ],
    [
      "three there, the rest gone",
      [line("present", { quantity: 3, rest: "absent" })],
      { present: 3, absent: 1, share: { low: 0.75, high: 0.75 } },
    ],
    [
      "three there, the rest of a model that counts",
      [
        line("present", { quantity: 3 }),
        line("substitute", { rest: "substitute", model: "tin", quantity: 0 }),
      ],
      { present: 3, substitute: 1, credits: [0.5], share: { low: 0.875, high: 0.875 } },
    ],
    [
      "four there, and a rest of none",
      [line("present", { quantity: 4, rest: "absent" })],
      { present: 4, share: { low: 1, high: 1 } },
    ],
    [
      "six there, and a rest of none",
      [line("present", { quantity: 6, rest: "absent" })],
      { present: 6, surplus: 2, share: { low: 1, high: 1 } },
    ],
    [
      "two there, one a substitute and two not established",
      [line("present", { quantity: 2 }), line("substitute"), line("unverified", { quantity: 2 })],
      { present: 2, substitute: 1, credits: [0], unverified: 2, surplus: 1, share: { low: 0.5, high: 1 } },
    ],
    // A place holds one thing, so that two halves in it are no whole. Common practice, no source; the best one is in it.
    [
      "more substitutes than places",
      [line("present", { quantity: 3 }), line("substitute", { quantity: 2, model: "tin" })],
      { present: 3, substitute: 2, credits: [0.5], surplus: 1, share: { low: 0.875, high: 0.875 } },
    ],
    [
      "a substitute beside all that belong",
      [line("present", { quantity: 4 }), line("substitute", { quantity: 1, model: "tin" })],
      { present: 4, substitute: 1, surplus: 1, share: { low: 1, high: 1 } },
    ],
    [
      "a substitute that counts, one of none and a doubtful one for the last place",
      [
        line("present", { quantity: 3 }),
        line("substitute", { quantity: 1 }),
        line("substitute", { quantity: 1, model: "tin" }),
        line("unverified", { quantity: 1 }),
      ],
      // The tin one counts for certain; the doubtful one may be right.
      {
        present: 3,
        substitute: 2,
        unverified: 1,
        credits: [0.5],
        surplus: 2,
        share: { low: 0.875, high: 1 },
      },
    ],
    [
      "two there, one gone, one nobody looked at",
      [line("present", { quantity: 2 }), line("absent")],
      { present: 2, absent: 1, unexamined: 1, share: { low: 0.5, high: 0.75 } },
    ],
    // No more are gone than there are empty places: 4 issued, less those that are there.
    [
      "more gone than there were",
      [line("absent", { quantity: 6 })],
      { absent: 4, share: { low: 0, high: 0 } },
    ],
    [
      "one there, and as many gone as were issued",
      [line("present", { quantity: 1 }), line("absent", { quantity: 4 })],
      { present: 1, absent: 3, share: { low: 0.25, high: 0.25 } },
    ],
    [
      "all gone, and as many others in their place",
      [line("absent", { quantity: 4 }), line("substitute", { quantity: 4, model: "tin" })],
      { substitute: 4, credits: [0.5, 0.5, 0.5, 0.5], share: { low: 0.5, high: 0.5 } },
    ],
  ])("%s", (_, lines, found) => {
    expect(findPart(four, lines)).toEqual(units(found));
  });
});

const level = (id: string, needs: Partial<Level["needs"]>): Level => ({
  id,
  name: id,
  needs: { standing: [], parts: [], groups: [], ...needs },
});

const assess = (parts: readonly Part[], lines: Record<string, PartLine[]>, levels: Level[] = []) =>
  assessCompleteness(variant("a", { parts, levels }), {
    parts: new Map(Object.entries(lines)),
    extras: [],
  });

describe("the parts of an example", () => {
  it("are named by what is known of them, in the order of the reference", () => {
    const parts = ["gone", "half", "sub", "doubt", "dark", "more", "never", "whole"].map((id) =>
      part(id, { quantity: 2 }),
    );
    const found = assess(parts, {
      whole: [line("present")],
      never: [line("not-issued")],
      more: [line("present", { quantity: 3 })],
      doubt: [line("unverified"), line("present")],
      sub: [line("substitute"), line("absent")],
      half: [line("present"), line("absent")],
      gone: [line("absent")],
    });
    expect(found).toMatchObject({
      missing: ["gone"],
      partial: ["half", "sub"],
      substitutes: ["sub"],
      unverified: ["doubt"],
      unexamined: ["dark"],
      surplus: ["more"],
    });
  });

  it("are not missing where one of them is there, or stands in, however many are said to be gone", () => {
    const parts = [part("rod", { quantity: 2 }), part("mirror", { accepts: new Map([["plain", 1]]) })];
    const found = assess(parts, {
      rod: [line("present", { quantity: 1 }), line("absent", { quantity: 3 })],
      mirror: [line("substitute", { model: "plain" }), line("absent")],
    });
    expect(found).toMatchObject({ missing: [], partial: ["rod"], substitutes: ["mirror"] });
  });

  it("that were never issued are nowhere named but as surplus where one is there all the same", () => {
    const found = assess([part("hook")], {
      hook: [line("not-issued"), line("present"), line("unverified"), line("substitute"), line("absent")],
    });
    expect(found).toMatchObject({
      main: null,
      missing: [],
      partial: [],
      substitutes: [],
      unverified: [],
      unexamined: [],
      surplus: ["hook"],
    });
  });

  it("are the same whether the record is one word, kept by the reader for all, or a line of its own", () => {
    const hook = part("hook", { quantity: 2 });
    const word = Object.freeze(line("absent"));
    const own = line("absent");
    for (const lines of [[word], [own], [word], [line("absent", { quantity: 2 })]])
      expect(assess([hook], { hook: lines }).parts.get("hook")).toEqual(findPart(hook, [own]));
    for (const lines of [
      [word, own],
      [word, word],
      [own, word],
    ])
      expect(assess([hook], { hook: lines }).parts.get("hook")).toMatchObject({ absent: 2, unexamined: 0 });
    expect(assess([hook], { hook: [word, Object.freeze(line("present"))] }).partial).toEqual(["hook"]);
    expect(assess([hook], { hook: [Object.freeze(line("present"))] }).partial).toEqual([]);
    // A line is written by one author and may be read by another's program: what can still change is not kept.
    const open = { ...line("absent"), state: "absent" as PartLine["state"] };
    expect(assess([hook], { hook: [open] }).missing).toEqual(["hook"]);
    open.state = "present";
    expect(assess([hook], { hook: [open] }).missing).toEqual([]);
    expect(assess([part("hook")], {}).unexamined).toEqual(["hook"]);
  });
});

describe("completeness by standing", () => {
  // By hand: weights 5, 2 and 1; shares 1/2, 1 and 0 to 1: (2.5 + 2)/8 to (2.5 + 2 + 1)/8; units 1 + 3 of 6 to 5 of 6.
  const parts = [
    part("body", { standing: "core", weight: 5, quantity: 2 }),
    part("lens", { weight: 2, quantity: 3 }),
    part("hook"),
    part("oil", { standing: "consumable", quantity: 2 }),
    part("chalk", { standing: "consumable", weight: 3 }),
    part("strap", { standing: "optional" }),
  ];
  const lines = {
    body: [line("present", { quantity: 1, rest: "absent" })],
    lens: [line("present")],
    oil: [line("present")],
    chalk: [line("absent")],
    strap: [line("unverified")],
  };

  it("weighs by weight and counts by units, each standing by itself", () => {
    const { main, consumable, optional } = assess(parts, lines);
    expect(main).toEqual({
      weighted: { low: 4.5 / 8, high: 5.5 / 8 },
      counted: { low: 4, high: 5, expected: 6 },
    });
    expect(consumable).toEqual({
      weighted: { low: 0.25, high: 0.25 },
      counted: { low: 2, high: 2, expected: 3 },
    });
    expect(optional).toEqual({
      weighted: { low: 0, high: 1 },
      counted: { low: 0, high: 1, expected: 1 },
    });
  });

  it("leaves out what was never issued, and is nothing where that is all", () => {
    const { main, consumable } = assess(parts, {
      ...lines,
      hook: [line("not-issued")],
      oil: [line("not-issued")],
      chalk: [line("not-issued")],
    });
    expect(main?.weighted).toEqual({ low: 4.5 / 7, high: 4.5 / 7 });
    expect(main?.counted.expected).toBe(5);
    expect(consumable).toBeNull();
  });
});

describe("the best level", () => {
  const parts = [
    part("body", { standing: "core", group: "instrument" }),
    part("lens", { group: "optics", quantity: 2 }),
    part("hook"),
  ];
  const levels = [
    level("all", { standing: ["core", "issued"] }),
    level("sees", { groups: ["optics"], parts: ["body"] }),
    level("bare", { groups: ["instrument"] }),
  ];

  it.each<[string, Record<string, PartLine[]>, string | null, string | null]>([
    [
      "all is there",
      { body: [line("present")], lens: [line("present")], hook: [line("present")] },
      "all",
      "all",
    ],
    ["nothing was looked at", {}, null, "all"],
    ["the hook is gone", { body: [line("present")], hook: [line("absent")] }, "bare", "sees"],
    [
      "one lens is gone",
      { body: [line("present")], lens: [line("present", { quantity: 1, rest: "absent" })] },
      "bare",
      "bare",
    ],
    [
      "there never were lenses",
      { body: [line("present")], lens: [line("not-issued")], hook: [line("absent")] },
      "sees",
      "sees",
    ],
    ["the body is gone", { body: [line("absent")] }, null, null],
  ])("where %s", (_, lines, sure, possible) => {
    expect(assess(parts, lines, levels).level).toEqual({ sure, possible });
  });

  it("that needs nothing, or nothing that it was issued, is never reached", () => {
    const nowhere = { sure: null, possible: null };
    expect(assess(parts, {}, [level("any", {})]).level).toEqual(nowhere);
    expect(assess(parts, {}, [level("whole", { standing: ["optional"] })]).level).toEqual(nowhere);
    const unissued = { lens: [line("not-issued")] };
    expect(assess(parts, unissued, [level("optics", { groups: ["optics"] })]).level).toEqual(nowhere);
    expect(assess(parts, {}, []).level).toEqual({ sure: null, possible: null });
  });
});
