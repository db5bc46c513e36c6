import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import { examplesOf, isRecorded } from "../../../shared/assessments/rarity/examples.ts";
import type { Item } from "../../../shared/records/item.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import { date, line, part, sighting, variant } from "../properties/given.ts";
import { item } from "../properties/given-collection.ts";

const reference = variant("a", {
  parts: [
    part("body", { standing: "core", weight: 3 }),
    part("tray"),
    part("oil", { standing: "consumable" }),
    part("strap", { standing: "optional" }),
  ],
});

const logged = (...rows: Partial<Sighting>[]) => examplesOf(reference, rows.map(sighting), []);
const withItems = (rows: readonly Partial<Sighting>[], ...items: Item[]) =>
  examplesOf(
    reference,
    rows.map(sighting),
    items.map((each) => ({ item: each, completeness: assessCompleteness(reference, each) })),
  );

describe("sightings are of one example", () => {
  it.each<[string, Partial<Sighting>, Partial<Sighting>, number]>([
    [
      "by the name, spaces around it aside",
      { example: " the mill chest " },
      { example: "the mill chest" },
      1,
    ],
    ["by the serial, its spaces and letter case aside", { serial: "h 12" }, { serial: "H12" }, 1],
    [
      "by the serial, what parts its letters from its number aside",
      { serial: "HQ-77" },
      { serial: "HQ77" },
      1,
    ],
    ["by the serial, zeros before its number aside", { serial: "HQ 077" }, { serial: "HQ/77" }, 1],
    ["not by a serial whose number is parted", { serial: "HQ1-11" }, { serial: "HQ11-1" }, 2],
    ["not by a serial with zeros behind", { serial: "HQ770" }, { serial: "HQ77" }, 2],
    ["not by a name that reads like a serial", { example: "H12" }, { serial: "H12" }, 2],
    ["not by having neither", {}, {}, 2],
    ["not by another name", { example: "east" }, { example: "west" }, 2],
  ])("%s", (_, first, second, examples) => {
    expect(logged(first, second)).toHaveLength(examples);
  });

  it("by way of others, however long the way", () => {
    const found = logged(
      { serial: "1" },
      { serial: "3" },
      { example: "b" },
      { example: "b", serial: "3" },
      { example: "a", serial: "1" },
      { example: "other" },
      { example: "a", serial: "3" },
    );
    expect(found.map(({ rows }) => rows.length)).toEqual([6, 1]);
    expect([...(found[0]?.keys ?? [])].sort()).toEqual(["example a", "example b", "serial 1", "serial 3"]);
  });

  it("and tell of every list and row that names it, and of the items that it is", () => {
    const rows = [
      { example: "e", list: "north", source: "s" },
      { example: "e", list: "south" },
      { example: "e" },
    ];
    const [found] = withItems(rows, item("one", { example: "e" }), item("two", { example: "e" }));
    expect([...(found?.lists ?? [])]).toEqual(["north", "south"]);
    expect(found?.rows.map(({ list }) => list)).toEqual(["north", "south", undefined]);
    expect(found?.items).toEqual(["one", "two"]);
    expect(found?.sightings).toBe(5);
    expect(withItems([{}])[0]?.items).toEqual([]);
  });

  it("of which one listed again is no other occasion, though one occasion there was", () => {
    const again = { example: "e", relisted: true };
    expect(logged({ example: "e" }, again, again).map(({ sightings }) => sightings)).toEqual([1]);
    expect(logged(again, again).map(({ sightings }) => sightings)).toEqual([1]);
    expect(withItems([again], item("one", { example: "e" })).map(({ sightings }) => sightings)).toEqual([1]);
  });

  // The contract: a relisted row is the same offer again, and no new occasion.
  it("of which one listed again that names no example is one of the others, where another was offered", () => {
    const again = { kind: "offer", relisted: true } as const;
    expect(logged({ example: "e", kind: "offer" }, again, again).map(({ sightings }) => sightings)).toEqual([
      1,
    ]);
    expect(logged({ kind: "offer" }, again)).toHaveLength(1);
    expect(logged(again)).toHaveLength(1);
    expect(logged({ example: "e", kind: "record" }, again)).toHaveLength(2);
    expect(logged({ example: "e", kind: "offer" }, { ...again, example: "f" })).toHaveLength(2);
  });

  it("an item that is not counted is none of them", () => {
    expect(withItems([], item("one"), item("two", { census: false })).map(({ items }) => items)).toEqual([
      ["one"],
    ]);
  });
});

// Of several rows the last one holds: by the latest bound of `seen`, then the earliest, then the order of rows.
describe("of a part's state the latest sighting that states it counts", () => {
  const trayOf = (...rows: [seen: string, there: boolean][]) => {
    const [found] = logged(
      ...rows.map(([seen, there]) => ({
        example: "e",
        seen: date(seen),
        present: there ? ["tray"] : [],
        absent: there ? [] : ["tray"],
      })),
    );
    return found?.shares.get("tray");
  };
  const there = { low: 1, high: 1 };
  const gone = { low: 0, high: 0 };

  it.each<[string, [string, boolean], [string, boolean]]>([
    ["by its latest bound", ["2001/2005", true], ["2003", false]],
    ["then by its earliest", ["2004/2005", true], ["2001/2005", false]],
    ["of an end that is not known its beginning tells", ["2001/", true], ["1990", false]],
    ["an end that is not known is none after its beginning", ["2003", true], ["2001/", false]],
    ["an end that is open is not over", ["1990/..", true], ["2001", false]],
    ["of open ends the later beginning", ["1995/..", true], ["1990/..", false]],
    ["a beginning that is not known is before any other", ["1990/2001", true], ["/2001", false]],
  ])("%s", (_, later, earlier) => {
    expect(trayOf(earlier, later)).toEqual(there);
    expect(trayOf(later, earlier)).toEqual(there);
  });

  it("of the same date the last in the log", () => {
    expect(trayOf(["2001", true], ["2001", false])).toEqual(gone);
    expect(trayOf(["2001", false], ["2001", true])).toEqual(there);
  });

  it("an item by its date of examination, and without one as it stands today", () => {
    const seen = { example: "e", seen: date("2010"), present: ["tray"] };
    const state = (more: Partial<Item>) =>
      withItems(
        [seen, { ...seen, seen: date("2005/..") }],
        item("one", { example: "e", parts: new Map([["tray", [line("absent")]]]), ...more }),
      )[0]?.shares.get("tray");
    expect(state({ examined: date("2008") })).toEqual(there);
    expect(state({})).toEqual(gone);
  });

  it("of the same day an item before the log, since it comes after it", () => {
    const row = { example: "e", seen: date("2010"), present: ["tray"] };
    const [found] = withItems(
      [row, { ...row, example: "f" }],
      item("one", { example: "e", examined: date("2010"), parts: new Map([["tray", [line("absent")]]]) }),
    );
    expect(found?.shares.get("tray")).toEqual(gone);
  });

  it("where it states it: by name, or as the rest of them", () => {
    expect([...(logged({})[0]?.shares ?? [])]).toEqual([]);
    const [found] = logged(
      { example: "e", seen: date("2001"), present: ["body"], absent: ["rest"] },
      { example: "e", seen: date("2002"), present: ["tray"] },
    );
    expect([...(found?.shares ?? [])]).toEqual([
      ["body", there],
      ["tray", there],
      ["oil", gone],
      ["strap", gone],
    ]);
  });

  it("where an item has a line for it, even one that says that it was never issued", () => {
    const [found] = withItems(
      [{ example: "e", seen: date("2001"), present: ["rest"] }],
      item("one", {
        example: "e",
        parts: new Map([
          ["tray", [line("not-issued")]],
          ["oil", [line("unverified")]],
        ]),
      }),
    );
    expect([...(found?.shares ?? [])]).toEqual([
      ["body", there],
      ["tray", "not-issued"],
      ["oil", { low: 0, high: 1 }],
      ["strap", there],
    ]);
  });
});

describe("a share is recorded", () => {
  it.each([
    [1, 1, true],
    [0, 0, true],
    [0.25, 0.5, true],
    [0.5, 1, false],
    [0, 1, false],
  ])("%d to %d: %o", (low, high, expected) => expect(isRecorded({ low, high })).toBe(expected));
});

describe("how complete an example is on record", () => {
  const of = (present: string[], absent: string[]) => logged({ present, absent })[0]?.recordedCompleteness;

  // By hand, of the weights 3 and 1 of the core and the issued part.
  it.each<[string[], string[], number | null]>([
    [["body", "tray"], [], 1],
    [["body"], ["tray"], 0.75],
    [["tray"], ["body"], 0.25],
    [[], ["rest"], 0],
    [["body"], [], null],
    [[], ["tray"], null],
    [["oil"], [], null],
    [["body", "tray"], ["oil", "strap"], 1],
  ])("with %j and without %j: %d", (present, absent, expected) => expect(of(present, absent)).toBe(expected));

  it("does not hold against it what it was never issued, and is nothing where that is all", () => {
    const completeness = (...states: ("present" | "not-issued" | "unverified")[]) =>
      withItems(
        [],
        item("one", {
          parts: new Map(["body", "tray"].map((id, at) => [id, [line(states[at] ?? "present")]])),
        }),
      )[0]?.recordedCompleteness;
    expect(completeness("present", "not-issued")).toBe(1);
    expect(completeness("not-issued", "not-issued")).toBeNull();
    expect(completeness("present", "unverified")).toBeNull();
  });
});
