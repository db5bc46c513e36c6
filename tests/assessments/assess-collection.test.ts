import { describe, expect, it } from "vitest";
import { assessCollection } from "../../shared/assessments/assess-collection.ts";
import type { PartLine } from "../../shared/records/item.ts";
import type { Hazard } from "../../shared/records/register.ts";
import { date, feature, line, part, range, sighting, variant } from "./properties/given.ts";
import { collection, item } from "./properties/given-collection.ts";

const parts = (states: Record<string, PartLine["state"]>) =>
  new Map(Object.entries(states).map(([id, state]) => [id, [line(state)]]));

const hazard = (id: string): Hazard => ({
  id,
  name: id,
  caution: "",
  translated: {},
  source: "",
  url: undefined,
  note: undefined,
});

describe("hazards", () => {
  const hazards = new Map(["lead", "mercury"].map((id) => [id, hazard(id)]));
  const variants = [
    variant("a", {
      parts: [part("bottle", { hazards: ["mercury"] }), part("weight", { hazards: ["lead"] })],
    }),
  ];

  it("of a variant are all that its parts can have, of an item those of what may be in it", () => {
    const { variants: assessed, items } = assessCollection(
      collection({ variants, hazards, items: [item("one", { parts: parts({ bottle: "absent" }) })] }),
    );
    expect(assessed.get("a")?.hazards.map(({ hazard: { id }, parts: of }) => [id, of])).toEqual([
      ["lead", ["weight"]],
      ["mercury", ["bottle"]],
    ]);
    expect(items.get("one")?.hazards.map(({ hazard: { id } }) => id)).toEqual(["lead"]);
  });

  it("of a variant are not those of what lies in one of its cases beside it", () => {
    const extra = { name: "Jar", quantity: 1, note: undefined, hazards: ["lead"], private: [] };
    const { variants: assessed, items } = assessCollection(
      collection({ variants: [variant("a")], hazards, items: [item("one", { extras: [extra] })] }),
    );
    expect(assessed.get("a")?.hazards).toEqual([]);
    expect(items.get("one")?.hazards).toEqual([{ hazard: hazard("lead"), parts: [], extras: ["Jar"] }]);
  });
});

describe("two items that are held to be one example", () => {
  const features = new Map(
    [feature("lock", ["iron", "brass"]), feature("lid", ["flat", "domed"])].map((each) => [each.id, each]),
  );
  const assess = (...examined: string[]) =>
    assessCollection(
      collection({
        families: [{ id: "chest", features }],
        variants: [variant("a", { parts: [part("body"), part("tray")] })],
        items: [
          item("east", {
            serial: "5",
            examined: date(examined[0] ?? "1990"),
            features: new Map([["lock", "iron"]]),
            parts: parts({ body: "present", tray: "present" }),
          }),
          item("west", {
            serial: "5",
            examined: date(examined[1] ?? "2000"),
            features: new Map([
              ["lock", "brass"],
              ["lid", "domed"],
            ]),
            parts: parts({ body: "present", tray: "absent" }),
          }),
          item("far", {
            features: new Map([
              ["lock", "brass"],
              ["lid", "domed"],
            ]),
            parts: parts({ body: "present" }),
          }),
        ],
      }),
    );

  // Gower (1971), by hand: of lock, body and tray, known of both, the body alone agrees.
  it("are likened by what was found of each", () => {
    const pair = assess().comparisons.find(({ items: ids }) => ids.join() === "east,west");
    expect(pair?.likeness).toBeCloseTo(1 / 3, 12);
    expect(pair?.compared).toEqual({ features: ["lock"], parts: ["body", "tray"] });
  });

  // By hand: the lid and the body agree; the lock does where the brass one was seen last.
  it("are one neighbour, with what was seen last of each feature", () => {
    const nearest = (...examined: string[]) =>
      assess(...examined)
        .items.get("far")
        ?.nearest.map(({ example, likeness, compared }) => [example.items, likeness, compared]);
    expect(nearest("1990", "2000")).toEqual([[["east", "west"], 1, 3]]);
    expect(nearest("2000", "1990")).toEqual([[["east", "west"], 2 / 3, 3]]);
  });

  it("are nobody's neighbours to themselves", () => {
    const { items } = assess();
    expect(items.get("east")?.nearest.map(({ example }) => example.items)).toEqual([["far"]]);
  });
});

describe("an item that is an example of its own", () => {
  // Gower (1971), by hand: both bodies are there; the tray of one is gone, as the log alone says, and the other's is there.
  it("is likened by what the log tells of it, too", () => {
    const { comparisons } = assessCollection(
      collection({
        variants: [variant("a", { parts: [part("body"), part("tray")] })],
        items: [
          item("east", { serial: "5", parts: parts({ body: "present" }) }),
          item("west", { parts: parts({ body: "present", tray: "present" }) }),
        ],
        sightings: [sighting({ serial: "5", absent: ["tray"] })],
      }),
    );
    expect(comparisons).toMatchObject([{ likeness: 0.5, compared: { parts: ["body", "tray"] } }]);
  });
});

describe("an item that is not counted in the census", () => {
  const reference = variant("a", { parts: [part("body"), part("tray")] });
  const given = collection({
    families: [{ id: "chest", features: new Map([["lock", feature("lock", ["iron", "brass"])]]) }],
    variants: [reference],
    items: [
      item("counted", {
        features: new Map([["lock", "iron"]]),
        parts: parts({ body: "present", tray: "absent" }),
      }),
      item("left", {
        census: false,
        serial: "900",
        publish: { serial: "shown", price: "hidden" },
        features: new Map([["lock", "iron"]]),
        parts: parts({ body: "present", tray: "present" }),
      }),
    ],
  });

  // Gower (1971), by hand: the lock and the body agree, the tray does not: two of three.
  it("is likened to those that are, and is nobody's neighbour", () => {
    const { items, comparisons } = assessCollection(given);
    expect(
      items
        .get("left")
        ?.nearest.map(({ example, likeness, compared }) => [example.items, likeness, compared]),
    ).toEqual([[["counted"], 2 / 3, 3]]);
    expect(items.get("counted")?.nearest).toEqual([]);
    expect(comparisons.map(({ items: pair, likeness }) => [pair, likeness])).toEqual([
      [["counted", "left"], 2 / 3],
    ]);
  });

  it("is no neighbour to itself where the log has it", () => {
    const logged = collection({
      variants: [reference],
      items: [...given.items.values()],
      sightings: [sighting({ serial: "900", present: ["rest"] })],
    });
    const { items } = assessCollection(logged);
    expect(items.get("left")?.nearest.map(({ example }) => example.items)).toEqual([["counted"]]);
  });

  it("adds neither a sighting nor a serial to what is estimated", () => {
    const open = collection({
      variants: [variant("a", { serials: [range({ from: 1 })] })],
      items: [...given.items.values()],
      sightings: [2, 6, 7, 14].map((serial) => sighting({ serial: String(serial) })),
    });
    const { rarity } = assessCollection(open).variants.get("a") ?? {};
    expect(rarity).toMatchObject({ sightings: 5, distinct: 5 });
    // The textbook sample 2, 6, 7, 14: 14 + 14/4 − 1.
    expect(rarity?.made.value).toBe(16.5);
  });
});

describe("families", () => {
  const lock = feature("lock", ["iron", "brass"]);
  const shape = feature("shape", ["round", "square"]);

  it("are each compared and keyed by their own variants and features", () => {
    const { families } = assessCollection(
      collection({
        families: [
          { id: "chest", features: new Map([["lock", lock]]) },
          { id: "box", features: new Map([["shape", shape]]) },
          { id: "bare", features: new Map() },
        ],
        variants: [
          variant("a", { features: new Map([["lock", ["iron"]]]) }),
          variant("r", { family: "box", features: new Map([["shape", ["round"]]]) }),
          variant("b", { features: new Map([["lock", ["brass"]]]) }),
          variant("s", { family: "box", features: new Map([["shape", ["square"]]]) }),
        ],
      }),
    );
    expect([...families].map(([id, { comparison, key }]) => [id, comparison.variants, key.sets])).toEqual([
      ["chest", ["a", "b"], [["lock"]]],
      ["box", ["r", "s"], [["shape"]]],
      ["bare", [], [[]]],
    ]);
  });

  it("lend an item the variants that it might be instead", () => {
    const { items } = assessCollection(
      collection({
        families: [{ id: "chest", features: new Map([["lock", lock]]) }],
        variants: [variant("a"), variant("b"), variant("r", { family: "box" })],
        items: [item("one", { variant: "b" })],
      }),
    );
    expect(items.get("one")?.identification.candidates.map(({ variant: id }) => id)).toEqual(["b", "a"]);
  });
});

describe("the years watched", () => {
  const watching = date("2001/2010");
  const offers = [
    sighting({ kind: "offer", seen: date("2003") }),
    sighting({ kind: "offer", seen: date("1999") }),
    sighting({ kind: "offer", seen: date("2004"), variant: "b" }),
  ];

  it("are those of the settings, and hold for every variant", () => {
    const given = collection({ variants: [variant("a"), variant("b")], sightings: offers });
    const { variants, watched } = assessCollection({ ...given, settings: { ...given.settings, watching } });
    expect(watched).toEqual({ first: 2001, last: 2010, declared: true });
    expect(["a", "b"].map((id) => variants.get(id)?.rarity.appearance.value)).toEqual([0.1, 0.1]);
  });

  it("without settings are those of the whole log, whatever the variant", () => {
    const given = collection({ variants: [variant("a"), variant("b")], sightings: offers });
    const { variants, watched } = assessCollection(given);
    expect(watched).toEqual({ first: 1999, last: 2004, declared: false });
    expect(["a", "b"].map((id) => variants.get(id)?.rarity.appearance.value)).toEqual([2 / 6, 1 / 6]);
  });
});

describe("the rarity of a variant and of its items", () => {
  const whole = { id: "whole", name: "Whole", needs: { standing: [], parts: ["body", "tray"], groups: [] } };
  const bare = { id: "bare", name: "Bare", needs: { standing: [], parts: ["body"], groups: [] } };
  const reference = variant("a", {
    parts: [part("body", { weight: 3 }), part("tray")],
    levels: [whole, bare],
    serials: [range({ from: 1 })],
  });
  const both = { present: ["body", "tray"] };
  const log = [
    sighting({ ...both, serial: "2" }),
    sighting({ ...both, serial: "2" }),
    sighting({ serial: "6", present: ["body"], absent: ["tray"] }),
    sighting({ serial: "7", absent: ["body"], present: ["tray"] }),
  ];
  const scale = {
    id: "universal",
    kind: "rarity" as const,
    name: "",
    citation: undefined,
    note: undefined,
    classes: [1, 4].map((low) => ({
      id: `from ${low}`,
      low,
      high: low === 1 ? 3 : undefined,
      words: undefined,
      translated: {},
      means: undefined,
    })),
  };
  const assess = (...items: Parameters<typeof collection>[0]["items"] & object) =>
    assessCollection(
      collection({ variants: [reference], sightings: log, items, scales: new Map([["universal", scale]]) }),
    );

  it("is told part by part, level by level, and by the class of its survivors", () => {
    const { rarity } = assess().variants.get("a") ?? {};
    expect([...(rarity?.parts ?? [])].map(([id, { inputs }]) => [id, inputs])).toEqual([
      ["body", { having: 2, recorded: 3 }],
      ["tray", { having: 2, recorded: 3 }],
    ]);
    expect([...(rarity?.levels ?? [])].map(([id, { share }]) => [id, share.inputs])).toEqual([
      ["whole", { reaching: 1, recorded: 3 }],
      ["bare", { reaching: 2, recorded: 3 }],
    ]);
    // Chao1, by hand: 3 + 2·1/(2·2) = 3.5, and three at least.
    expect(rarity?.survivors.value).toBe(3.5);
    expect(rarity?.class).toEqual({ scale: "universal", low: "from 1", high: "from 4" });
  });

  it("counts an item's serial among those seen only where the item shows it", () => {
    const made = (serial: "shown" | "masked" | "hidden") =>
      assess(item("one", { serial: "14", publish: { serial, price: "hidden" } })).variants.get("a")?.rarity
        .made.inputs;
    const seen = (distinct: number, largest: number) => ({
      ranges: [{ prefix: "", from: 1, to: null, distinct, largest }],
    });
    expect(made("shown")).toEqual(seen(4, 14));
    expect(made("masked")).toEqual(seen(3, 7));
    expect(made("hidden")).toEqual(seen(3, 7));
  });

  it("says of its survivors how many are counted against the evidence, and known from nowhere else", () => {
    const survivorsOf = (...items: readonly Partial<Parameters<typeof item>[1] & object>[]) =>
      assessCollection(
        collection({
          variants: [reference],
          sightings: [...log, sighting({ serial: "B9" })],
          items: items.map((more, at) => item(`item-${at}`, more)),
        }),
      ).variants.get("a")?.rarity.survivors.caveats[0];
    // Serials that no range of the variant has speak against it; "B9" is in its log all the same.
    expect(survivorsOf({ serial: "B7" }, { serial: "B8" }, { serial: "B9" }, { serial: "5" })).toEqual({
      says: "counts-contradicted",
      values: { examples: 2 },
    });
    // One outfit, described twice, and once without its serial.
    const twice = survivorsOf({ serial: "B7", example: "x" }, { example: "x" });
    expect(twice?.says).not.toBe("counts-contradicted");
    expect(survivorsOf({ serial: "B9" }, { serial: "5" })?.says).not.toBe("counts-contradicted");
  });

  it("gives no rank to an item of which nobody has looked for any part, and says why", () => {
    const { items } = assess(item("one"), item("two", { parts: parts({ body: "unverified" }) }));
    expect(items.get("one")?.rarity).toMatchObject({
      rank: null,
      asComplete: { value: null, insufficient: { says: "no-part-examined" } },
    });
    expect(items.get("two")?.rarity.rank).toMatchObject({ of: 4 });
  });

  it("gives none to an item of which only what the main completeness leaves out was looked at", () => {
    const oiled = variant("b", { parts: [part("body"), part("oil", { standing: "consumable" })] });
    const { items } = assessCollection(
      collection({
        variants: [oiled],
        items: [item("one", { variant: "b", parts: parts({ oil: "present" }) })],
      }),
    );
    expect(items.get("one")?.rarity).toMatchObject({
      rank: null,
      asComplete: { value: null, insufficient: { says: "no-part-examined" } },
    });
  });

  it("says how many serials it left out, without those that the log has anyway", () => {
    const hidden = { serial: "hidden", price: "hidden" } as const;
    const { variants } = assess(
      item("one", { serial: "14", publish: hidden }),
      item("two", { serial: " 14", publish: hidden }),
      item("three", { serial: "6", publish: hidden }),
      item("four", { serial: "15", publish: hidden, census: false }),
      item("five", { serial: "16", publish: { ...hidden, serial: "shown" } }),
    );
    expect(variants.get("a")?.rarity.made.caveats).toContainEqual({
      says: "serials-not-shown",
      values: { serials: 1 },
    });
  });

  it("holds an item by its certain part against the others, and not against itself in the log", () => {
    const { items } = assess(
      item("one", { serial: "6", census: false, parts: parts({ body: "present", tray: "absent" }) }),
      item("two", { census: false, parts: parts({ body: "absent" }) }),
      item("three", { variant: "a", example: "e", parts: parts({ body: "unverified", tray: "present" }) }),
    );
    expect(items.get("one")?.rarity).toMatchObject({
      rank: { place: 2, of: 3, sharing: 1 },
      asComplete: { inputs: { atLeastAsComplete: 2, compared: 3, certain: 0.75 } },
    });
    expect(items.get("two")?.rarity.rank).toEqual({ place: 4, of: 4, sharing: 1 });
    expect(items.get("three")?.rarity.asComplete.inputs).toMatchObject({ certain: 0.25, compared: 4 });
  });

  it("has no rank for an item whose variant lists no part to count by", () => {
    const { items } = assessCollection(
      collection({
        variants: [variant("a", { parts: [part("oil", { standing: "consumable" })] })],
        items: [item("one")],
      }),
    );
    expect(items.get("one")?.rarity.rank).toBeNull();
  });
});
