import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { type Files, item, smallCollection, writeCollection } from "../collections/collection.ts";

/** What is told of a collection, without what it lacks. */
const told = (files: Files): string[] =>
  checkCollection(writeCollection(files)).diagnostics.flatMap(({ code, file, line, found, remedy }) =>
    ["source-missing", "no-photograph"].includes(code)
      ? []
      : [`${file.replace(/^.*\//, "")}:${line} ${code} ${found}${remedy === null ? "" : ` ${remedy}`}`],
  );

const parts = "parts:\n  fork: { name: Fork }\n  mercury-cup: { name: Cup }\n";
const one = { "content/items/one.md": item("parts: { fork: present }") };

describe("ranges of serials", () => {
  const ranges = (...each: string[]) =>
    told(smallCollection(`${parts}serials:\n${each.map((range) => `  - ${range}\n`).join("")}`, one));

  it("of one prefix share no number, unless some were left unused", () => {
    expect(ranges("{ prefix: A, from: 1, to: 100 }", "{ prefix: A, from: 51, to: 150 }")).toEqual([
      "chest-a.yaml:7 range-overlap A51 to A150, which overlaps A1 to A100",
    ]);
    expect(ranges("{ from: 1, to: 100 }", "{ from: 100, to: 150 }")).toHaveLength(1);
    expect(ranges("{ from: 1, to: 100 }", "{ from: 101, to: 150 }")).toEqual([]);
    expect(ranges("{ prefix: A, from: 1, to: 100 }", "{ prefix: B, from: 1, to: 100 }")).toEqual([]);
    expect(ranges("{ from: 1, to: 100 }", "{ from: 40, to: 50, skipped: true }")).toEqual([]);
    expect(ranges("{ from: 40, to: 50, skipped: true }", "{ from: 1, to: 100 }")).toEqual([]);
    // Where an end is not known, nobody can say how far a range goes.
    expect(ranges("{ from: 1 }", "{ from: 51, to: 150 }")).toEqual([]);
    expect(ranges("{ from: 1 }", "{ from: 2 }", "{ prefix: B }", "{ prefix: B }")).toEqual([]);
  });

  it("certainly share the known end of one that lies within the other", () => {
    expect(ranges("{ from: 100 }", "{ from: 51, to: 150 }")).toEqual([
      "chest-a.yaml:7 range-overlap 51 to 150, which overlaps 100 and on",
    ]);
    expect(ranges("{ from: 51, to: 150 }", "{ to: 51 }")).toHaveLength(1);
    expect(ranges("{ to: 51 }", "{ from: 51 }")).toHaveLength(1);
  });

  it("with their ends the wrong way round are told of, and no serial that would lie in them", () => {
    const files = smallCollection(`${parts}serials: [{ prefix: A, from: 140, to: 1 }]\n`, {
      "content/items/one.md": item("serial: A7\nparts: { fork: present }"),
      "content/sightings/log.csv": "seen,variant,kind,serial\n2001,chest-a,offer,A9\n",
    });
    expect(told(files)).toEqual(["chest-a.yaml:5 range-reversed a range from 140 to 1"]);
  });
});

describe("a level of completeness", () => {
  const levels = (needs: string) =>
    told(smallCollection(`${parts}levels:\n  - { id: whole, name: Whole, needs: ${needs} }\n`, one));

  it("needs some part of the variant", () => {
    const nothing =
      "chest-a.yaml:6 wrong-value a level that needs no part of this variant, so that any outfit would reach it";
    expect(levels("{ standing: [optional] }")).toEqual([nothing]);
    expect(levels("{ standing: [core, issued] }")).toEqual([]);
    expect(levels("{ parts: [fork] }")).toEqual([]);
  });

  it("is told of once, where what it needs is not known", () => {
    expect(levels("{ parts: [spoon] }")).toHaveLength(1);
    expect(levels("{ groups: [optics] }")).toHaveLength(1);
  });
});

describe("the years in which offers were watched for", () => {
  it.each(["2003/..", "/2024", "../2024"])("have both their ends: not %s", (years) => {
    const files = smallCollection(parts, {
      ...one,
      "content/collection.yaml": `title: T\nwatching: "${years}"\n`,
    });
    expect(told(files)).toEqual([`collection.yaml:2 wrong-value "${years}"`]);
  });

  it.each(["2003/2024", "2003~/2024", "2003"])("may be %s", (years) => {
    const files = smallCollection(parts, {
      ...one,
      "content/collection.yaml": `title: T\nwatching: "${years}"\n`,
    });
    expect(told(files)).toEqual([]);
  });
});

describe("a variant that extends another", () => {
  const extending = (yaml: string) =>
    told(
      smallCollection(`${parts}features: { lock: iron }\n`, {
        ...one,
        "schemas/reference/chest/chest-b.yaml": `name: B\nextends: chest-a\n${yaml}`,
      }),
    );

  it("takes away what it inherits, and nothing else", () => {
    expect(extending("parts: { mercury-cup: null }\nfeatures: { lock: null }\n")).toEqual([]);
    expect(extending("parts:\n  mercury-cap: null\nfeatures: { lck: null }\n")).toEqual([
      'chest-b.yaml:4 unknown-part "mercury-cap" Did you mean "mercury-cup"?',
      'chest-b.yaml:5 unknown-feature "lck" Did you mean "lock"?',
    ]);
  });

  it("is not every variant: where nothing is inherited, a part with nothing behind it is not lost", () => {
    expect(told(smallCollection("parts:\n  fork: {}\n  bow:\n", one))).toEqual([
      'chest-a.yaml:4 wrong-value nothing after "bow" If there is nothing to say, write "bow: {}".',
    ]);
  });
});

describe("the examples of a log", () => {
  const log = (...rows: string[]) =>
    told(
      smallCollection(parts, {
        "content/items/attic-find.md": item("parts: { fork: present }"),
        "content/items/other.md": item("serial: T3\nexample: the-other-set\nparts: { fork: present }"),
        "content/sightings/log.csv": `seen,variant,kind,example,serial\n${rows.map((row, at) => `${2001 + at},chest-a,offer,${row}\n`).join("")}`,
      }),
    );

  it("have one serial each, in whatever way it is written", () => {
    expect(log("the-band-set,T17", "the-band-set,T 017", "the-yard-set,T22")).toEqual([]);
    expect(log("the-band-set,T17", "the-band-set,T22").join()).toMatch(
      /^log.csv:3 doubtful-example "T22" as the serial of "the-band-set", which has "T17" elsewhere and counts as one example/,
    );
  });

  it("have the serial of the item that bears their name, whatever others read", () => {
    expect(log("the-other-set,T4", "the-other-set,T5")).toEqual([]);
  });

  it("have one spelling each, and that of the item, once for each other one", () => {
    expect(log("the-mill,", "The-Mill,", "the mill,", "The-Mill,", "the-Other-set,", "yard,")).toEqual([
      'log.csv:3 doubtful-example "The-Mill", which counts as a different example from "the-mill" Did you mean "the-mill"?',
      'log.csv:4 doubtful-example "the mill", which counts as a different example from "the-mill" Did you mean "the-mill"?',
      'log.csv:6 doubtful-example "the-Other-set", which counts as a different example from "the-other-set" Did you mean "the-other-set"?',
    ]);
  });

  it("are others by another number, however it is parted", () => {
    expect(log("lot 1-12,", "lot 11-2,", "lot 112,")).toEqual([]);
    expect(log("lot 1-12,", "Lot-1 12,")).toHaveLength(1);
  });

  // The contract: an item goes by its `example`, where it has no serial.
  it("are told apart from an item whose id they bear, unless a serial says that they are one", () => {
    expect(log("attic-find,", "Other,T4")).toEqual([
      'log.csv:2 doubtful-example "attic-find", which counts as a different example from the item "attic-find"',
      'log.csv:3 doubtful-example "Other", which counts as a different example from the item "other"',
    ]);
    expect(log("other,T3", "other,", "the-other-set,").join()).not.toContain("doubtful-example");
  });
});
