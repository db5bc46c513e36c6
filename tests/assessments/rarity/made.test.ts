import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessMade } from "../../../shared/assessments/rarity/made.ts";
import { rangeOf } from "../../../shared/records/serial.ts";
import type { Variant } from "../../../shared/records/variant.ts";
import { item, publishedIn, smallCollection, writeCollection } from "../../collections/collection.ts";
import { range, variant } from "../properties/given.ts";

const made = (
  more: Partial<Omit<Variant, "parts">>,
  serials: readonly string[] = [],
  withheld: readonly string[] = [],
) =>
  assessMade(
    variant("a", more),
    { shown: serials.map((serial) => ({ serial, sources: [] })), withheld, misread: 0 },
    0.95,
  );
const numbers = (...seen: number[]) => seen.map((each) => `N${each}`);
const said = (statements: readonly { readonly says: string }[]) => statements.map(({ says }) => says);

describe("what a record says of the number made", () => {
  const record = { low: 412, high: 412, source: "ledger", page: "31", note: undefined };

  it("is the figure, whatever serials there are", () => {
    expect(made({ made: record, serials: [range({ from: 1, to: 5 })] })).toEqual({
      value: 412,
      low: 412,
      high: 412,
      unit: "examples",
      confidence: 0.95,
      method: "documented",
      inputs: { low: 412, high: 412, page: "31" },
      sources: ["ledger"],
      caveats: [],
      insufficient: null,
    });
  });

  it("is no figure where it gives a range, which is given instead", () => {
    expect(made({ made: { ...record, high: 450, page: undefined } })).toEqual({
      value: null,
      low: 412,
      high: 450,
      unit: "examples",
      confidence: 0.95,
      method: "documented",
      inputs: { low: 412, high: 450, page: null },
      sources: ["ledger"],
      caveats: [],
      insufficient: { says: "made-only-a-range", values: { low: 412, high: 450 } },
    });
  });
});

describe("what the serials say of the number made", () => {
  it("of a closed range is its length, for certain", () => {
    expect(made({ serials: [range({ prefix: "N", from: 2001, to: 2412, source: "ledger" })] })).toEqual({
      value: 412,
      low: 412,
      high: 412,
      unit: "examples",
      confidence: 0.95,
      method: "serial-ranges",
      inputs: { ranges: [{ prefix: "N", from: 2001, to: 2412 }] },
      sources: ["ledger"],
      caveats: [],
      insufficient: null,
    });
  });

  // The textbook sample 2, 6, 7, 14 of a range that starts at 1: 14 + 14/4 − 1 = 16.5, and at most 27 (published
  // check B1); here it starts at 101, and one was seen twice.
  it("of a range without an end is counted from its start", () => {
    const { value, low, high, inputs, caveats } = made({ serials: [range({ prefix: "N", from: 101 })] }, [
      ...numbers(114, 102, 107, 106),
      "n 102",
      "X900",
      "N99",
    ]);
    expect([value, low, high]).toEqual([16.5, 14, 27]);
    expect(inputs).toEqual({ ranges: [{ prefix: "N", from: 101, to: null, distinct: 4, largest: 14 }] });
    expect(said(caveats)).toEqual(["assumes-random-serials"]);
  });

  // By hand: w = 13, k = 4: (13 − 1)(4 + 1)/(4 − 1) − 1 = 19.
  it("of a range without start and end is estimated from its span", () => {
    const { value, low, inputs, caveats } = made(
      { serials: [range({ prefix: "N" })] },
      numbers(114, 102, 107, 106),
    );
    expect([value, low]).toEqual([19, 13]);
    expect(said(caveats)).toEqual(["assumes-random-serials"]);
    expect(inputs).toEqual({ ranges: [{ prefix: "N", from: null, to: null, distinct: 4, span: 13 }] });
  });

  // The textbook sample again, its numbers counted backwards from the end: 114 − 113 + 1 = 2, then 6, 7 and 14.
  it("of a range whose end alone is known is counted from there", () => {
    const { value, low, high, inputs } = made(
      { serials: [range({ prefix: "N", to: 114 })] },
      numbers(113, 109, 108, 101),
    );
    expect([value, low, high]).toEqual([16.5, 14, 27]);
    expect(inputs).toEqual({ ranges: [{ prefix: "N", from: null, to: 114, distinct: 4, fromEnd: 14 }] });
  });

  it.each([
    // Of 20 numbers N7 is the 14th from the end: 27 would begin at -6, and the 20th is N1.
    [20, [19, 15, 14, 7], [16.5, 14, 20]],
    // N1 is the 14th of 14: there is no other before it.
    [14, [13, 9, 8, 1], [14, 14, 14]],
    // Of 0 to 13 it is N0.
    [13, [12, 8, 7, 0], [14, 14, 14]],
  ])("of a range up to %i is no more than there are numbers", (to, seen, expected) => {
    const { value, low, high } = made({ serials: [range({ prefix: "N", to })] }, numbers(...seen));
    expect([value, low, high]).toEqual(expected);
  });

  it("is added up end by end, which assumes that the blocks do not matter", () => {
    const { value, low, high, sources, caveats } = made(
      {
        serials: [
          range({ prefix: "N", from: 1, source: "ledger" }),
          range({ prefix: "K", from: 1, to: 50, source: "book" }),
        ],
      },
      numbers(2, 6, 7, 14),
    );
    expect([value, low, high]).toEqual([66.5, 64, 77]);
    expect(sources).toEqual(["book", "ledger"]);
    expect(caveats).toEqual([
      { says: "assumes-random-serials", values: {} },
      { says: "serials-in-several-blocks", values: { ranges: 2 } },
    ]);
  });

  // To leave out the serials that a collection does not show in full is what its contract asks; that an estimate from
  // fewer serials can be too low follows from the estimator: it never falls as the largest seen rises.
  it("says how many serials were left out of it, where it is an estimate", () => {
    const open = { serials: [range({ prefix: "N", from: 1 })] };
    expect(made(open, numbers(2, 6, 7, 14), ["N5", "N90", "N3", "K1"]).caveats).toEqual([
      { says: "assumes-random-serials", values: {} },
      { says: "serials-not-shown", values: { serials: 3 } },
    ]);
    expect(made({ serials: [range({ from: 1, to: 5 })] }, [], ["1", "9"]).caveats).toEqual([]);
    const unbegun = { serials: [range({ prefix: "N", to: 90 })] };
    expect(said(made(unbegun, numbers(2, 6, 7, 14), ["N5", "N91"]).caveats)).toContain("serials-not-shown");
  });

  it("rests on who tells of the serials that it is estimated from, and of a closed range on its record alone", () => {
    const { sources } = assessMade(
      variant("a", {
        serials: [
          range({ prefix: "N", from: 1, source: "ledger" }),
          range({ prefix: "K", from: 1, to: 50, source: "book" }),
        ],
      }),
      {
        shown: [
          { serial: "N2", sources: ["sale list", "roll"] },
          { serial: "N6", sources: [undefined] },
          { serial: "K7", sources: ["letter"] },
          { serial: "X7", sources: ["print"] },
        ],
        withheld: [],
        misread: 0,
      },
      0.95,
    );
    expect(sources).toEqual(["book", "ledger", "roll", "sale list"]);
  });

  it("takes nothing for granted where both ends of every range are known", () => {
    expect(made({ serials: [range({ from: 1, to: 5 }), range({ from: 11, to: 12 })] })).toMatchObject({
      value: 7,
      caveats: [],
    });
  });
});

describe("serials of several ranges of one prefix", () => {
  const seen = (...numbers: number[]) => numbers.map((each) => `A${each}`);
  const madeOf = (ranges: readonly Parameters<typeof range>[0][], numbers: readonly number[]) =>
    made({ serials: ranges.map((each) => range({ prefix: "A", ...each })) }, seen(...numbers));

  // By hand: k = 3 (12, 20, 40), m = 40: 40 + 40/3 - 1 = 52.33. C(40,3) = 9,880 = 197,600/20, and
  // C(106,3) = 192,920, C(107,3) = 198,485: at most 106. With the 100 of the closed block 152.33, 140 to 206.
  it.each([
    ["the later one closed", [{ from: 1 }, { from: 1001, to: 1100 }]],
    ["written in the other order", [{ from: 1001, to: 1100 }, { from: 1 }]],
  ])("count in one of them alone, %s", (_, ranges) => {
    const { value, low, high } = madeOf(ranges, [12, 20, 40, 1003, 1050, 1090]);
    expect(value).toBeCloseTo(152 + 1 / 3, 10);
    expect([low, high]).toEqual([140, 206]);
  });

  // k = 2, m = 40: 40 + 20 - 1 = 59; C(40,2) = 780 = 15,600/20, C(177,2) = 15,576, C(178,2) = 15,753: at most 177.
  // k = 3, m = 90: 90 + 30 - 1 = 119; C(90,3) = 117,480 = 2,349,600/20, C(242,3) = 2,332,880, C(243,3) = 2,362,041: 242.
  it("count in the one that has begun, both open", () => {
    const { value, low, high, inputs } = madeOf([{ from: 1 }, { from: 1001 }], [20, 40, 1003, 1050, 1090]);
    expect([value, low, high]).toEqual([178, 130, 419]);
    expect(inputs).toEqual({
      ranges: [
        { prefix: "A", from: 1, to: null, before: 1001, distinct: 2, largest: 40 },
        { prefix: "A", from: 1001, to: null, distinct: 3, largest: 90 },
      ],
    });
  });

  // 90 + 45 - 1 = 134, of a range that has 100 numbers before the next; 41 + 20.5 - 1 = 60.5 of 50 after the one before.
  it("are no more than there are numbers up to the range beside theirs", () => {
    const ended = madeOf([{ from: 1 }, { from: 101, to: 150 }], [80, 90]);
    expect([ended.value, ended.low, ended.high]).toEqual([150, 140, 150]);
    const begun = madeOf([{ from: 1, to: 100 }, { to: 150 }], [40, 110, 140]);
    expect([begun.value, begun.low, begun.high]).toEqual([150, 141, 150]);
  });

  it("are of an open range beyond those that were left unused within it", () => {
    const { serials } = variant("a", {
      serials: [
        range({ prefix: "A", from: 1, source: "book" }),
        range({ prefix: "A", from: 501, to: 600, skipped: true }),
      ],
    });
    expect(rangeOf(serials, "A650")).toBe(serials[0]);
  });

  it("are in one range or in none, however the ranges are bounded", () => {
    const ends = fc.record(
      { from: fc.integer({ min: 1, max: 60 }), to: fc.integer({ min: 61, max: 120 }) },
      { requiredKeys: [] },
    );
    const blocks = fc.array(ends, { minLength: 1, maxLength: 4 });
    const numbers = fc.uniqueArray(fc.integer({ min: 1, max: 150 }), { maxLength: 20 });
    fc.assert(
      fc.property(blocks, numbers, (ranges, given) => {
        const { inputs } = madeOf(ranges, given);
        const counted = (inputs.ranges as readonly { readonly distinct?: number }[]).reduce(
          (sum, { distinct = 0 }) => sum + distinct,
          0,
        );
        expect(counted).toBeLessThanOrEqual(given.length);
      }),
    );
  });
});

describe("the number made is not known", () => {
  it("without a record and without a range", () => {
    expect(made({})).toMatchObject({
      value: null,
      method: "serial-ranges",
      inputs: { ranges: [] },
      insufficient: { says: "made-unknown", values: {} },
    });
  });

  it.each([
    [{ from: 1 }, [], 0, 2],
    [{ from: 1 }, [7], 1, 2],
    [{ from: 1 }, [7, 7], 1, 2],
    [{}, [7, 9], 2, 3],
    [{ to: 90 }, [7], 1, 2],
  ])("of %j with the serials %j", (ends, seen, distinct, needed) => {
    const { value, insufficient, inputs } = made(
      { serials: [range({ prefix: "N", ...ends })] },
      numbers(...seen),
    );
    expect(value).toBeNull();
    expect(insufficient).toEqual({ says: "too-few-serials", values: { distinct, needed } });
    expect(inputs).toEqual({ ranges: [{ prefix: "N", from: null, to: null, ...ends, distinct }] });
  });

  it.each([
    [{ from: 1 }, [7, 9]],
    [{}, [7, 9, 12]],
  ])("of %j with the serials %j it is", (ends, seen) => {
    expect(made({ serials: [range({ prefix: "N", ...ends })] }, numbers(...seen)).value).not.toBeNull();
  });

  it("where one of several ranges says too little, or left numbers unused", () => {
    const known = range({ prefix: "K", from: 1, to: 50 });
    const withheld = (other: Parameters<typeof range>[0]) =>
      made({ serials: [known, range({ prefix: "N", ...other })] });
    expect(withheld({ from: 1 })).toMatchObject({ value: null, low: null, high: null });
    expect(withheld({ from: 1 }).insufficient?.says).toBe("too-few-serials");
    expect(withheld({ from: 1, to: 9, skipped: true })).toMatchObject({
      value: null,
      insufficient: { says: "serials-skipped", values: {} },
    });
  });
});

describe("an example of which the record has several serials", () => {
  const madeOf = (rows: readonly string[], items: Readonly<Record<string, string>> = {}) =>
    publishedIn(
      writeCollection(
        smallCollection("parts: { p: {} }\nserials: [{ prefix: T, from: 101 }]\n", {
          "content/sightings/log.csv": ["seen,variant,serial,example,kind", ...rows, ""].join("\n"),
          ...items,
        }),
      ),
    ).variants[0]?.rarity.made;
  const rows = ["2001,chest-a,T110,,record", "2002,chest-a,T130,,record", "2003,chest-a,T150,,record"];

  it("is cited with the rows that tell of its serials", () => {
    const cited = publishedIn(
      writeCollection(
        smallCollection("parts: { p: {} }\nserials: [{ prefix: T, from: 101, source: ledger }]\n", {
          "content/sources.yaml":
            "- { id: ledger, title: Ledger }\n- { id: sale, title: Sale }\n- { id: roll, title: Roll }\n",
          "content/sightings/log.csv":
            "seen,variant,serial,source,kind\n2001,chest-a,T110,sale,offer\n2002,chest-a,T110,roll,record\n2003,chest-a,T130,sale,offer\n",
        }),
      ),
    ).variants[0]?.rarity.made;
    expect(cited?.sources).toEqual(["ledger", "roll", "sale"]);
  });

  // Goodman 1952, by hand: k = 4 with the item's T155, so m = 55, and 55 + 55/4 - 1 = 67.75; T999 would give 1,123.75.
  it("counts by that of the item", () => {
    const made = madeOf([...rows, "2018,chest-a,T999,dale,mention"], {
      "content/items/dale/index.md": item("serial: T155\nexample: dale\npublish: { serial: shown }"),
    });
    expect(made).toMatchObject({ value: 67.75, low: 55 });
    expect(said(made?.caveats ?? [])).toContain("serials-misread");
  });

  // By hand: k = 4 with the later T140, so m = 50, and 50 + 50/4 - 1 = 61.5.
  it("counts by the one that was read last, where none is an item", () => {
    const made = madeOf([...rows, "2010,chest-a,T140,dale,mention", "2005,chest-a,T999,dale,mention"]);
    expect(made).toMatchObject({ value: 61.5, low: 50 });
    expect(said(made?.caveats ?? [])).toContain("serials-misread");
  });

  it("counts by none that is masked, though another was read in the log", () => {
    const made = madeOf([...rows, "2018,chest-a,T999,dale,mention"], {
      "content/items/dale/index.md": item("serial: T155\nexample: dale"),
    });
    // By hand: k = 3, m = 50, and 50 + 50/3 - 1 = 65.67.
    expect(made?.value).toBeCloseTo(65 + 2 / 3, 10);
  });
});
