import { describe, expect, it } from "vitest";
import { assessCollection } from "../../shared/assessments/assess-collection.ts";
import { assessFamilyKey } from "../../shared/assessments/family-key.ts";
import {
  comparedUnits,
  comparedVariants,
  compareItems,
  everyPairUpTo,
  pairsAtMost,
} from "../../shared/assessments/item-pair.ts";
import { attributesOf, likenessesIn, likenessRow, nearestOf } from "../../shared/assessments/likeness.ts";
import { examplesOf, type RecordedShare } from "../../shared/assessments/rarity/examples.ts";
import { compareVariants } from "../../shared/assessments/variant-comparison.ts";
import type { Item, PartLine } from "../../shared/records/item.ts";
import type { Sighting } from "../../shared/records/sighting.ts";
import { date, feature, line, part, range, sighting, variant } from "./properties/given.ts";
import { collection, item } from "./properties/given-collection.ts";

describe("which variants have every pair of their items compared", () => {
  const chosen = (...sizes: [string, number][]) => [...comparedVariants(new Map(sizes))];

  it("those of two to twelve items, the smallest first, then in the order of ids", () => {
    expect([everyPairUpTo, pairsAtMost]).toEqual([12, 1000]);
    expect(chosen(["d", 12], ["e", 13], ["c", 2], ["b", 3], ["a", 3], ["h", 3], ["f", 1], ["g", 0])).toEqual([
      "c",
      "a",
      "b",
      "h",
      "d",
    ]);
  });

  // By hand: twelve items make 66 pairs, fifteen times that is 990; five make 10, two make 1.
  it("as long as there are no more than a thousand pairs", () => {
    const twelves = Array.from({ length: 16 }, (_, at): [string, number] => [
      `v${String.fromCharCode(112 - at)}`,
      12,
    ]);
    const inOrder = twelves.map(([id]) => id).sort();
    expect(chosen(...twelves)).toEqual(inOrder.slice(0, 15));
    expect(chosen(...twelves.slice(1), ["five", 5])).toEqual(["five", ...inOrder.slice(0, 15)]);
    expect(chosen(...twelves.slice(1), ["five", 5], ["two", 2])).toEqual([
      "two",
      "five",
      ...inOrder.slice(0, 14),
    ]);
  });
});

const scale = part("scale", {
  serials: [range({ from: 1, to: 9, made: date("1900") }), range({ from: 10, made: date("1950") })],
});
const reference = variant("a", {
  issued: date("1900/1910"),
  parts: [
    part("body", { standing: "core", marks: ["{set}"] }),
    part("lens", { quantity: 2 }),
    part("oil", { standing: "consumable" }),
    scale,
  ],
});
const features = new Map(
  [feature("lock", ["iron", "brass"]), feature("lid", ["flat", "domed"])].map((each) => [each.id, each]),
);
const one = (id: string, parts: Record<string, PartLine[]>, more: Partial<Item> = {}) =>
  item(id, { set: "118", parts: new Map(Object.entries(parts)), ...more });
const assessed = (...items: Item[]) =>
  assessCollection(collection({ families: [{ id: "chest", features }], variants: [reference], items }));

describe("what a comparison reads of a part of an item", () => {
  const units = (id: string, parts: Record<string, PartLine[]>) => {
    const found = one("one", parts);
    const of = assessed(found).items.get("one");
    return of && comparedUnits(id, found, of);
  };

  it("is its units, its share, its models, and what its marks and serials say", () => {
    expect(
      units("lens", {
        lens: [line("substitute", { model: "tin" }), line("unverified"), line("absent", { model: "jar" })],
      }),
    ).toEqual({
      present: 0,
      substitute: 1,
      unverified: 1,
      // Two were issued, and something stands in both places.
      absent: 0,
      unexamined: 0,
      notIssued: 0,
      share: { low: 0, high: 0.5 },
      models: ["tin", "jar"],
      marks: null,
      dating: null,
    });
    expect(units("oil", {})).toMatchObject({ unexamined: 1, models: [], share: { low: 0, high: 1 } });
    expect(units("lens", { lens: [line("not-issued")] })).toMatchObject({ notIssued: 2, share: null });
    expect(units("stranger", {})).toBeNull();
  });

  it.each<[string[], string | null]>([
    [["118"], "matching"],
    [["97"], "other-set"],
    [["oak"], "partial"],
    [[], null],
  ])("is of the marks %j: %s", (marks, verdict) => {
    expect(units("body", { body: [line("present", { marks })] })?.marks).toBe(verdict);
  });

  it.each<[(string | undefined)[], string | null]>([
    [["5"], null],
    [["50"], "later"],
    [["5", "50"], "later"],
    [[undefined], null],
  ])("is of the serials %j: %s", (serials, dating) => {
    expect(units("scale", { scale: serials.map((serial) => line("present", { serial })) })?.dating).toBe(
      dating,
    );
  });
});

describe("a pair of items", () => {
  const east = one(
    "east",
    { body: [line("present")], lens: [line("present")] },
    {
      features: new Map([
        ["lock", "iron"],
        ["lid", "flat"],
      ]),
    },
  );
  const west = one(
    "west",
    {
      body: [line("present")],
      lens: [line("present", { quantity: 1, rest: "absent" })],
      oil: [line("absent")],
    },
    { features: new Map([["lock", "brass"]]) },
  );

  // Gower (1971), by hand: the locks differ (0), the bodies agree (1), of the lenses two and one of two (½).
  it("is told apart by features and parts, and likened over what is known of both", () => {
    const { comparisons } = assessed(west, east);
    expect(comparisons).toEqual([
      {
        variant: "a",
        items: ["east", "west"],
        features: new Map([
          ["lock", "differs"],
          ["lid", "unknown"],
        ]),
        parts: new Map([
          ["body", "alike"],
          ["lens", "differs"],
          ["oil", "unknown"],
          ["scale", "unknown"],
        ]),
        likeness: 0.5,
        compared: { features: ["lock"], parts: ["body", "lens"] },
      },
    ]);
  });

  it("has no likeness where nothing is known of both", () => {
    const { comparisons } = assessed(
      one("a", { body: [line("present")] }),
      one("b", { lens: [line("present")] }),
    );
    expect(comparisons).toMatchObject([{ likeness: null, compared: { features: [], parts: [] } }]);
  });

  it("is each two of a variant's items once, in the order of ids, and of no others", () => {
    const items = ["c", "a", "b"].map((id) => item(id));
    const given = collection({
      variants: [variant("a"), variant("other")],
      items: [...items, item("d", { variant: "other" })],
    });
    const { comparisons } = assessCollection(given);
    expect(comparisons.map(({ items: pair }) => pair)).toEqual([
      ["a", "b"],
      ["a", "c"],
      ["b", "c"],
    ]);
    expect(assessCollection(given, { watched: null, compared: new Set() }).comparisons).toEqual([]);
    expect(assessCollection(given, { watched: null, compared: new Set(["other"]) }).comparisons).toEqual([]);
  });

  it("is none where one was not assessed, and has no likeness without a row for each", () => {
    const { items } = assessed(west, east);
    const rows = examplesOf(reference, [sighting({ present: ["rest"] })], []);
    const compared = { features: ["lock"], parts: ["body"] };
    const row = rows[0] && likenessRow({ ...rows[0], features: new Map([["lock", "iron"]]) }, compared);
    const compare = (known: string[], rowed: string[]) =>
      compareItems(
        [east, west],
        reference,
        features.keys(),
        (id) => (known.includes(id) ? items.get(id) : undefined),
        { ...compared, rowOf: (id) => (rowed.includes(id) ? row : undefined) },
      );
    expect(compare(["east"], [])).toBeNull();
    expect(compare(["west"], [])).toBeNull();
    for (const rowed of [[], ["east"], ["west"]])
      expect(compare(["east", "west"], rowed)).toMatchObject({
        likeness: null,
        compared: { features: [], parts: [] },
      });
    expect(compare(["east", "west"], ["east", "west"])).toMatchObject({
      likeness: 1,
      compared: { features: ["lock"], parts: ["body"] },
    });
  });
});

describe("the nearest examples", () => {
  const compared = { features: ["lock"], parts: ["body", "lens", "oil"] };
  const rows = (...log: (Partial<Sighting> & { lock?: string })[]) =>
    log.map(({ lock, ...seen }) => {
      const [example] = examplesOf(reference, [sighting(seen)], []);
      if (!example) throw new Error("A sighting is of an example.");
      return likenessRow(
        lock === undefined ? example : { ...example, features: new Map([["lock", lock]]) },
        compared,
      );
    });
  const nearest = (of: ReturnType<typeof rows>, most?: number) => {
    const [first] = of;
    if (!first) throw new Error("One is asked for.");
    return nearestOf(likenessesIn(of, attributesOf(compared))(first), most).map(
      ({ example, likeness, compared: known }) => [example.rows[0]?.source, likeness, known],
    );
  };

  it("are rows of what was seen of features and is known of parts", () => {
    const [first] = rows({ lock: "iron", present: ["body"], absent: ["lens"] });
    expect(first?.values).toEqual(["iron", 1, 0, null]);
    const shared = first && {
      ...first.example,
      features: new Map(),
      shares: new Map<string, RecordedShare>([
        ["body", "not-issued"],
        ["lens", { low: 0.5, high: 1 }],
        ["oil", { low: 0.5, high: 0.5 }],
      ]),
    };
    expect(shared && likenessRow(shared, compared).values).toEqual([null, null, null, 0.5]);
    // Of four units of the lens one is gone and nobody looked for the others: how many are there is not known.
    const looked = first && {
      ...first.example,
      shares: new Map<string, RecordedShare>([["lens", { low: 0, high: 0.75 }]]),
    };
    expect(looked && likenessRow(looked, compared).values).toEqual(["iron", null, null, null]);
    expect(attributesOf(compared)).toEqual([
      { kind: "nominal" },
      { kind: "numeric", range: 1 },
      { kind: "numeric", range: 1 },
      { kind: "numeric", range: 1 },
    ]);
  });

  // Gower (1971), by hand, over what is known of both.
  // One thing in common is less than half of three.
  it("are the most alike first, those compared on little last; what nothing is known of is none", () => {
    const log = rows(
      { source: "one", lock: "iron", present: ["body", "lens", "oil"] },
      { source: "nothing" },
      { source: "half", present: ["body"], absent: ["lens"] },
      { source: "little", present: ["body"] },
      { source: "much", lock: "iron", present: ["body", "lens"] },
      { source: "none", absent: ["body"] },
    );
    expect(nearest(log)).toEqual([
      ["much", 1, 3],
      ["half", 0.5, 2],
      ["little", 1, 1],
      ["none", 0, 1],
    ]);
    expect(nearest(log, 2)).toHaveLength(2);
  });

  it("are the first recorded of those that are equally near, and a later one takes the place of one less like", () => {
    const log = rows(
      { source: "one", lock: "iron", present: ["body", "lens", "oil"] },
      { source: "far", absent: ["body"] },
      { source: "a little", present: ["body"] },
      { source: "as little", present: ["lens"] },
      { source: "more", present: ["body", "lens"] },
      { source: "as much", present: ["body", "oil"] },
      { source: "half", present: ["body"], absent: ["oil"] },
    );
    const inOrder = ["more", "as much", "a little", "as little", "half", "far"];
    for (const most of [1, 2, 3, 4, 5, 6, 7]) {
      expect(nearest(log, most).map(([source]) => source)).toEqual(inOrder.slice(0, most));
    }
  });

  it("are five where nobody asks for more", () => {
    expect(nearest(rows(...Array.from({ length: 8 }, () => ({ present: ["body"] }))))).toHaveLength(5);
  });
});

describe("the variants of a family side by side", () => {
  it("have a row for each feature declared and each part of any, by every name that it has", () => {
    const found = compareVariants({ features }, [
      variant("a", {
        features: new Map([["lock", ["iron"]]]),
        parts: [part("lens", { quantity: 2 }), part("hook")],
      }),
      variant("b", {
        features: new Map([
          ["lock", ["iron"]],
          ["lid", ["flat", "domed"]],
        ]),
        parts: [
          part("hook"),
          part("lens", { name: "Field lens", quantity: 2, standing: "optional" }),
          part("oil"),
        ],
      }),
    ]);
    const quantity = (count: number, standing: string) => ({ quantity: count, standing });
    expect(found).toEqual({
      variants: ["a", "b"],
      rows: [
        {
          kind: "feature",
          id: "lock",
          name: "lock",
          cells: [{ values: ["iron"] }, { values: ["iron"] }],
          differs: false,
        },
        {
          kind: "feature",
          id: "lid",
          name: "lid",
          cells: [null, { values: ["flat", "domed"] }],
          differs: true,
        },
        {
          kind: "part",
          id: "lens",
          name: "lens / Field lens",
          cells: [quantity(2, "issued"), quantity(2, "optional")],
          differs: true,
        },
        {
          kind: "part",
          id: "hook",
          name: "hook",
          cells: [quantity(1, "issued"), quantity(1, "issued")],
          differs: false,
        },
        { kind: "part", id: "oil", name: "oil", cells: [null, quantity(1, "issued")], differs: true },
      ],
    });
  });
});

describe("the printed key of a family", () => {
  const lid = feature("lid", ["flat", "domed", "tin", "never"]);
  const with_ = (id: string, values: Record<string, string[]>) =>
    variant(id, { features: new Map(Object.entries(values)) });

  it("asks one question after another, with values that leave the same variants for one answer", () => {
    const shape = feature("shape", ["round", "square", "oval"]);
    const variants = [
      with_("a", { lid: ["flat", "domed"], shape: ["round"] }),
      with_("b", { lid: ["flat", "domed"], shape: ["square"] }),
      with_("c", { lid: ["tin"] }),
    ];
    const { key, sets } = assessFamilyKey(
      new Map([
        ["lid", lid],
        ["shape", shape],
      ]),
      variants,
    );
    expect(sets).toEqual([["lid", "shape"]]);
    const end = (...ids: string[]) => ({ kind: "end", variants: ids });
    expect(key).toEqual({
      kind: "question",
      feature: "lid",
      answers: [
        {
          values: ["flat", "domed"],
          next: {
            kind: "question",
            feature: "shape",
            answers: [
              { values: ["round"], next: end("a") },
              { values: ["square"], next: end("b") },
            ],
          },
        },
        { values: ["tin"], next: end("c") },
      ],
    });
  });

  it("keeps apart what leaves a and b, and what leaves ab", () => {
    const { key } = assessFamilyKey(new Map([["lid", lid]]), [
      with_("a", { lid: ["flat"] }),
      with_("b", { lid: ["flat"] }),
      with_("ab", { lid: ["domed"] }),
    ]);
    expect(key).toMatchObject({
      answers: [
        { values: ["flat"], next: { variants: ["a", "b"] } },
        { values: ["domed"], next: { variants: ["ab"] } },
      ],
    });
  });

  it("ends at once where there is one variant, or nothing to tell them by", () => {
    const features = new Map([["lid", lid]]);
    expect(assessFamilyKey(features, [with_("a", { lid: ["flat"] })]).key).toEqual({
      kind: "end",
      variants: ["a"],
    });
    expect(assessFamilyKey(features, [with_("a", {}), with_("b", {})]).key).toEqual({
      kind: "end",
      variants: ["a", "b"],
    });
    expect(assessFamilyKey(new Map(), []).key).toEqual({ kind: "end", variants: [] });
  });
});
