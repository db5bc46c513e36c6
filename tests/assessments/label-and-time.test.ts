import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../shared/assessments/completeness.ts";
import { assessDating, compareDates } from "../../shared/assessments/dating.ts";
import { assessHazards, mayBeIn } from "../../shared/assessments/hazards.ts";
import { assessIdentification } from "../../shared/assessments/identification.ts";
import { tellingFeatures } from "../../shared/assessments/telling-features.ts";
import type { PartLine } from "../../shared/records/item.ts";
import type { Variant } from "../../shared/records/variant.ts";
import { date, feature, line, part, range, variant } from "./properties/given.ts";

const features = new Map(
  [
    feature("lock", ["iron", "brass", "steel"], 1),
    feature("lid", ["flat", "domed"], 2),
    feature("dovetails", ["five", "six"], 3),
  ].map((each) => [each.id, each]),
);
const of = (id: string, values: Record<string, string[]>, more: Partial<Omit<Variant, "parts">> = {}) =>
  variant(id, { features: new Map(Object.entries(values)), ...more });

const siblings = [
  of(
    "a",
    { lock: ["iron"], lid: ["flat"], dovetails: ["five"] },
    { serials: [range({ prefix: "A", from: 1 })] },
  ),
  of(
    "b",
    { lock: ["iron", "brass"], lid: ["domed"], dovetails: ["five"] },
    { serials: [range({ prefix: "B", from: 1 })] },
  ),
  of("c", { lock: ["brass"], lid: ["domed"] }),
];

describe("an object held against its label", () => {
  const identify = (claimed: string, seen: Record<string, string>, serial?: string) =>
    assessIdentification(
      { variant: claimed, serial, features: new Map(Object.entries(seen)) },
      siblings,
      features,
    );

  it("has every variant of its family for a candidate, the claimed one first", () => {
    expect(identify("b", { lock: "iron", lid: "domed" }, "B7")).toEqual({
      claimed: "b",
      verdict: "confirmed",
      candidates: [
        {
          variant: "b",
          contradictions: [],
          agreements: ["lock", "lid", "serial"],
          unobserved: ["dovetails"],
        },
        { variant: "a", contradictions: ["lid", "serial"], agreements: ["lock"], unobserved: ["dovetails"] },
        { variant: "c", contradictions: ["lock"], agreements: ["lid"], unobserved: [] },
      ],
      lookNext: [],
      caveats: [],
    });
  });

  it("agrees with nothing where nothing was seen, and says nothing of what no variant has", () => {
    expect(identify("c", { handle: "rope" })).toMatchObject({
      verdict: "consistent",
      candidates: [
        { variant: "c", contradictions: [], agreements: [], unobserved: ["lock", "lid"] },
        { variant: "a", contradictions: [], agreements: [], unobserved: ["lock", "lid", "dovetails"] },
        { variant: "b", contradictions: [], agreements: [], unobserved: ["lock", "lid", "dovetails"] },
      ],
    });
  });

  // By hand, in bits of doubt left: see identification.test.ts.
  it.each<[string, Record<string, string>, string | undefined, string, string[]]>([
    ["a", {}, undefined, "consistent", ["lid", "lock", "dovetails"]],
    ["a", { lid: "flat" }, undefined, "confirmed", []],
    ["a", { lid: "domed" }, undefined, "contradicted", []],
    ["a", { lock: "iron" }, undefined, "consistent", ["serial", "lid"]],
    ["a", {}, "A7", "consistent", ["lock", "lid", "dovetails"]],
    ["a", {}, "B7", "contradicted", []],
    ["c", {}, "B7", "consistent", ["lock", "dovetails"]],
    ["b", { lid: "domed" }, undefined, "consistent", ["lock", "dovetails"]],
    ["unheard-of", {}, undefined, "consistent", ["lid", "lock", "dovetails"]],
  ])("%s, seen with %j and the serial %s, is %s; then look at %j", (claimed, seen, serial, verdict, next) => {
    expect(identify(claimed, seen, serial)).toMatchObject({ verdict, lookNext: next });
  });

  it("is not confirmed by the others' contradictions alone, and contradicted where there is no variant", () => {
    const alone = assessIdentification(
      { variant: "a", serial: undefined, features: new Map() },
      siblings.slice(0, 1),
      features,
    );
    expect(alone).toMatchObject({ verdict: "consistent", lookNext: [] });
    const none = assessIdentification({ variant: "a", serial: undefined, features: new Map() }, [], features);
    expect(none).toEqual({
      claimed: "a",
      verdict: "contradicted",
      candidates: [],
      lookNext: [],
      caveats: [],
    });
    // The lock contradicts c; b, without a word of it, might be either.
    const quiet = assessIdentification(
      { variant: "a", serial: undefined, features: new Map([["lock", "iron"]]) },
      [of("a", {}), of("c", { lock: ["brass"] })],
      features,
    );
    expect(quiet.verdict).toBe("consistent");
  });
});

describe("the features that tell variants apart", () => {
  const ids = (variants: Variant[], ...of: Parameters<typeof feature>[]) =>
    tellingFeatures(
      variants,
      of.map((each) => feature(...each)),
    ).map(({ id }) => id);
  const pair = [of("a", { x: ["0"], y: ["0"], z: ["0"] }), of("b", { x: ["1"], y: ["1"], z: ["0"] })];

  it("are the less trouble first where they tell as much, then in the order of ids", () => {
    expect(ids(pair, ["y", ["0", "1"], 1], ["x", ["0", "1"], 2])).toEqual(["y", "x"]);
    expect(ids(pair, ["y", ["0", "1"]], ["x", ["0", "1"]])).toEqual(["x", "y"]);
    expect(ids(pair, ["x", ["0", "1"]], ["y", ["0", "1"]])).toEqual(["x", "y"]);
  });

  it("tell as much where they part as many from as many, in whatever order that is summed", () => {
    // One, two and three of six: (1·0 + 2·1 + 3·log₂ 3)/6 bits are left, or the same from the other end.
    const six = [..."abcdef"].map((id, at) =>
      of(id, { x: ["011222"[at] as string], y: ["000112"[at] as string] }),
    );
    expect(ids(six, ["x", ["0", "1", "2"], 1], ["y", ["0", "1", "2"], 2])).toEqual(["x", "y"]);
    expect(ids(six, ["x", ["0", "1", "2"], 2], ["y", ["0", "1", "2"], 1])).toEqual(["y", "x"]);
  });

  it("are not those of which all have the same, or nobody knows what any has", () => {
    expect(ids(pair, ["z", ["0", "1"]], ["unheard-of", ["0", "1"]])).toEqual([]);
  });

  it("are none where there is nothing to tell apart", () => {
    expect(ids(pair.slice(0, 1), ["x", ["0", "1"]])).toEqual([]);
    expect(ids([], ["x", ["0", "1"]])).toEqual([]);
  });

  it("are the more telling first, whatever the trouble", () => {
    const four = [
      of("a", { x: ["0"], y: ["0"] }),
      of("b", { x: ["0"], y: ["1"] }),
      of("c", { x: ["1"], y: ["2"] }),
      of("d", { x: ["1"], y: ["3"] }),
    ];
    expect(ids(four, ["x", ["0", "1"], 1], ["y", ["0", "1", "2", "3"], 3])).toEqual(["y", "x"]);
  });
});

describe("made and issued", () => {
  // A part is later where its earliest year lies after the latest of issue, earlier where wholly before.
  it.each([
    ["1926", "1920/1925", "later"],
    ["1925", "1920/1925", "fits"],
    ["1925/1930", "1920/1925", "fits"],
    ["1919", "1920/1925", "earlier"],
    ["1919/1920", "1920/1925", "fits"],
    ["1926-01-01", "1925-12-31", "later"],
    ["1925-12-31", "1925-12-31", "fits"],
    ["1925-12-31", "1926-01-01", "earlier"],
    ["../1930", "1920/1925", "fits"],
    ["../1919", "1920/1925", "earlier"],
    ["/1919", "1920/1925", "earlier"],
    ["1926/..", "1920/1925", "later"],
    ["1926/", "1920/1925", "later"],
    ["1910/..", "1920/1925", "fits"],
    ["1910/", "1920/1925", "fits"],
    ["/1930", "1920/1925", "fits"],
    ["1930", "1920/..", "fits"],
    ["1930", "1920/", "fits"],
    ["1910", "1920/", "earlier"],
    ["1910", "../1925", "fits"],
    ["1910", "/1925", "fits"],
    ["1930", "/1925", "later"],
    // Days are counted from 1970, before and after it.
    ["1980", "1975/", "fits"],
    ["1975/", "1980", "fits"],
    ["1980", "1975/..", "fits"],
    ["/1980", "1975", "fits"],
    ["1980", "/1975", "later"],
  ])("%s and %s: %s", (made, issued, verdict) => {
    expect(compareDates(date(made), date(issued))).toBe(verdict);
  });

  it("says nothing of what has no date", () => {
    expect(compareDates(undefined, date("1920"))).toBe("undated");
    expect(compareDates(date("1920"), undefined)).toBe("undated");
  });

  const scale = part("scale", {
    serials: [range({ from: 1, to: 99, made: date("1919") }), range({ from: 100, made: date("1926") })],
  });
  const reference = variant("a", {
    issued: date("1920/1925"),
    serials: [range({ prefix: "A", from: 1, made: date("1918/1919") })],
    parts: [scale, part("hook")],
  });
  const dated = (lines: Record<string, PartLine[]>, serial?: string, of = reference) =>
    assessDating(of, { serial, parts: new Map(Object.entries(lines)) });
  const bearing = (...serials: (string | undefined)[]) =>
    serials.map((serial) => line("present", { serial }));

  it("is told of each unit that bears a serial, where serials of the part are known", () => {
    const { parts } = dated({
      scale: bearing("7", undefined, "200"),
      hook: bearing("7"),
      stranger: bearing("7"),
    });
    expect([...parts]).toEqual([
      [
        "scale",
        [
          { line: 0, serial: "7", made: "1919", verdict: "earlier" },
          { line: 2, serial: "200", made: "1926", verdict: "later" },
        ],
      ],
    ]);
    expect([...dated({ scale: bearing(undefined) }).parts]).toEqual([]);
  });

  it("is that of the range in which the serial lies, where one before it is open", () => {
    const blocks = [
      range({ prefix: "A", from: 1, made: date("1900/1905") }),
      range({ prefix: "A", from: 1001, to: 1100, made: date("1920/1925") }),
    ];
    const lens = part("lens", {
      serials: [
        range({ prefix: "L", from: 1, made: date("1900/1905") }),
        range({ prefix: "L", from: 1001, to: 1100, made: date("1930/1935") }),
      ],
    });
    const outfit = variant("a", { issued: date("1900/1925"), serials: blocks, parts: [lens] });
    const found = dated({ lens: bearing("L1005", "L7", "L1200") }, "A1050", outfit);
    expect(found.serial.made).toBe("1920/1925");
    expect(found.parts.get("lens")).toEqual([
      { line: 0, serial: "L1005", made: "1930/1935", verdict: "later" },
      { line: 1, serial: "L7", made: "1900/1905", verdict: "fits" },
      { line: 2, serial: "L1200", made: null, verdict: "outside" },
    ]);
  });

  it("is told by the issue of the variant, and without one by the item's own serial", () => {
    expect(dated({}, "A7")).toMatchObject({ issued: "1920/1925", serial: { made: "1918/1919" } });
    const undated = { ...reference, issued: undefined };
    const found = dated({ scale: bearing("200", "X9") }, "A7", undated);
    expect(found).toMatchObject({ issued: "1918/1919", serial: { made: "1918/1919" } });
    expect(found.parts.get("scale")).toEqual([
      { line: 0, serial: "200", made: "1926", verdict: "later" },
      { line: 1, serial: "X9", made: null, verdict: "outside" },
    ]);
    expect(dated({ scale: bearing("200") }, undefined, undated)).toEqual({
      issued: null,
      serial: { made: null },
      parts: new Map([["scale", [{ line: 0, serial: "200", made: "1926", verdict: "undated" }]]]),
      caveats: [],
    });
    expect(dated({}, "Z7")).toMatchObject({ issued: "1920/1925", serial: { made: null } });
  });
});

describe("a serial of a part that lies in none of its ranges", () => {
  const lamp = part("lamp", { serials: [range({ prefix: "L", from: 1, to: 100, made: date("1930") })] });
  const says = (...lines: PartLine[]) =>
    assessDating(variant("a", { issued: date("1931"), parts: [lamp] }), {
      serial: undefined,
      parts: new Map([["lamp", lines]]),
    })
      .parts.get("lamp")
      ?.map(({ verdict }) => verdict);

  it("is outside, unless it cannot be read in full, or is that of another model", () => {
    expect(
      says(
        line("present", { serial: "L7" }),
        line("present", { serial: "L300" }),
        line("unverified", { serial: "M7" }),
        line("present", { serial: "L3?0" }),
        line("substitute", { serial: "M7" }),
        line("absent", { serial: "L300" }),
      ),
    ).toEqual(["earlier", "outside", "outside", "undated", "undated"]);
  });
});

describe("a date that is marked uncertain or approximate", () => {
  const of = (issued: string, made: string) => {
    const scale = part("scale", { serials: [range({ from: 1, to: 100, made: date(made) })] });
    const lines = new Map([["scale", [line("present", { serial: "7" })]]]);
    return assessDating(variant("a", { issued: date(issued), parts: [scale] }), {
      serial: undefined,
      parts: lines,
    });
  };

  it("is taken as written, and told of where a part is dated by it", () => {
    const later = [{ line: 0, serial: "7", made: "1907/1909", verdict: "later" }];
    expect(of("1900/1906~", "1907/1909").parts.get("scale")).toEqual(later);
    expect(of("1900/1906~", "1907/1909").caveats).toEqual([{ says: "dates-as-written", values: {} }]);
    expect(of("1900/1906", "1907?").caveats).toHaveLength(1);
    expect(of("1900/1906", "1907/1909").caveats).toEqual([]);
    const undated = variant("a", { issued: date("1900~") });
    expect(assessDating(undated, { serial: undefined, parts: new Map() }).caveats).toEqual([]);
  });
});

describe("hazards", () => {
  const register = new Map(
    ["lead", "mercury", "radium"].map((id) => [
      id,
      { id, name: id, caution: "", translated: {}, source: "", url: undefined, note: undefined },
    ]),
  );
  const parts = [
    part("dial", { hazards: ["radium"], quantity: 2 }),
    part("bottle", { hazards: ["mercury", "lead"] }),
    part("weight", { hazards: ["lead"] }),
    part("hook"),
  ];

  it("are named in the order of the register, with the parts and the extras that have them", () => {
    const extras = ["lead", "asbestos"].map((id) => ({
      name: `A jar of ${id}`,
      quantity: 1,
      note: undefined,
      hazards: [id],
      private: [],
    }));
    const found = assessHazards(parts, ({ id }) => id !== "dial", extras, register);
    expect(found.map(({ hazard, ...more }) => [hazard.id, more])).toEqual([
      ["lead", { parts: ["bottle", "weight"], extras: ["A jar of lead"] }],
      ["mercury", { parts: ["bottle"], extras: [] }],
    ]);
    expect(assessHazards(parts, () => false, [], register)).toEqual([]);
  });

  it("may be in a case as long as one unit may be", () => {
    const may = (lines: Record<string, PartLine[]>) => {
      const is = mayBeIn(
        assessCompleteness(variant("a", { parts }), { parts: new Map(Object.entries(lines)), extras: [] }),
      );
      return parts.filter(is).map(({ id }) => id);
    };
    expect(may({})).toEqual(["dial", "bottle", "weight", "hook"]);
    expect(may({ dial: [line("absent")], bottle: [line("not-issued")] })).toEqual(["weight", "hook"]);
    expect(may({ dial: [line("absent", { quantity: 1 })], hook: [line("unverified")] })).toContain("dial");
    // Found, whatever else is written of it.
    expect(may({ dial: [line("absent", { quantity: 2 }), line("present")] })).toContain("dial");
    expect(may({ bottle: [line("not-issued"), line("present")] })).toContain("bottle");
    const known = mayBeIn(assessCompleteness(variant("a", { parts: [] }), { parts: new Map(), extras: [] }));
    expect(parts.some(known)).toBe(false);
  });
});
