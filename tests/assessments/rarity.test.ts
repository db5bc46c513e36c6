import { describe, expect, it } from "vitest";
import { dataOf, type Files, item, smallCollection } from "../collections/collection.ts";

interface Figure {
  value: number | null;
  low: number | null;
  high: number | null;
  unit: string;
  method: string;
  inputs: Record<string, unknown>;
  sources: string[];
  caveats: string[];
  insufficient: string | null;
}

interface VariantRarity {
  made: Figure;
  sightings: number;
  distinct: number;
  once: number;
  twice: number;
  coverage: Figure;
  survivors: Figure;
  survivorsTwoList: Figure;
  survivalRate: Figure;
  parts: Record<string, Figure>;
  appearance: Figure;
  wait: Figure;
  class: { scale: string; low: string | null; high: string | null } | null;
}

interface ItemRarity {
  asComplete: Figure;
  asCompleteSurvivors: Figure;
  asCompleteWait: Figure;
  rank: { place: number; of: number; sharing: number } | null;
}

const header =
  "seen,variant,serial,example,source,kind,list,present,absent,condition,price,currency,relisted,note";
const columns = header.split(",");

type Row = Partial<Record<string, string>>;

const csv = (rows: readonly Row[]) =>
  [
    header,
    ...rows.map((row) =>
      columns.map((column) => row[column] ?? (column === "variant" ? "chest-a" : "")).join(","),
    ),
  ].join("\r\n");

const two = "parts:\n  body: { standing: core }\n  tray: { standing: issued }\n";

function withLog(rows: readonly Row[], variant = two, more: Files = {}): Map<string, unknown> {
  return dataOf(
    smallCollection(variant, {
      "content/sources.yaml": "- { id: ledger, title: Ledger }\n- { id: lists, title: Lists }\n",
      "content/sightings/log.csv": csv(rows),
      ...more,
    }),
  );
}

const rarityOf = (data: Map<string, unknown>) =>
  (data.get("/data/variants/chest-a.json") as { rarity: VariantRarity }).rarity;
const itemRarityOf = (data: Map<string, unknown>, id = "one") =>
  (data.get(`/data/items/${id}.json`) as { rarity: ItemRarity }).rarity;

const seen = (example: string, year = "2001", more: Row = {}): Row => ({
  seen: year,
  example,
  kind: "record",
  source: "lists",
  ...more,
});
const times = (count: number, make: (at: number) => Row): Row[] =>
  Array.from({ length: count }, (_, at) => make(at));

describe("examples", () => {
  it("one name, one serial, or either by way of the other, is one example", () => {
    const { sightings, distinct, once, twice } = rarityOf(
      withLog([
        seen("", "2001", { serial: "12" }),
        seen("the mill chest", "2002", { serial: "12" }),
        seen("the mill chest", "2003"),
        seen("another", "2004"),
        seen("", "2005"),
        seen("", "2005"),
      ]),
    );
    expect({ sightings, distinct, once, twice }).toEqual({ sightings: 6, distinct: 4, once: 3, twice: 0 });
  });

  it("the same offer listed again is no new occasion", () => {
    const { sightings, distinct, once, twice } = rarityOf(
      withLog([
        seen("a", "2001", { kind: "offer" }),
        seen("a", "2001", { kind: "offer", relisted: "true" }),
        seen("b", "2002", { kind: "offer", relisted: "true" }),
      ]),
    );
    expect({ sightings, distinct, once, twice }).toEqual({ sightings: 2, distinct: 2, once: 2, twice: 0 });
  });

  it("an item is one more sighting of its example, unless it says census: false", () => {
    const log = [seen("", "2001", { serial: "7" })];
    const counted = withLog(log, two, { "content/items/one/index.md": item('serial: "7"\nexamined: 2010') });
    expect(rarityOf(counted)).toMatchObject({ sightings: 2, distinct: 1, twice: 1 });
    const left = withLog(log, two, { "content/items/one/index.md": item('serial: "7"\ncensus: false') });
    expect(rarityOf(left)).toMatchObject({ sightings: 1, distinct: 1, once: 1 });
  });

  it("of a part's state the latest sighting that states it counts", () => {
    const { parts } = rarityOf(
      withLog([
        seen("a", "2009", { absent: "tray" }),
        seen("a", "2003", { present: "body;tray" }),
        seen("b", "2004", { present: "rest" }),
      ]),
    );
    expect(parts.body?.inputs).toEqual({ having: 2, recorded: 2 });
    expect(parts.tray?.inputs).toEqual({ having: 1, recorded: 2 });
  });
});

describe("survivors", () => {
  // Published with the design as an example of a figure: 21 examples, 9 seen once, 6 twice.
  // By hand: 21 + 9·8/(2·7) = 26.142857…
  it("takes 21 examples, 9 seen once and 6 twice, for about 26, 22 to 44", () => {
    const rows = [
      ...times(9, (at) => seen(`once ${at}`)),
      ...times(12, (at) => seen(`twice ${at % 6}`)),
      ...times(18, (at) => seen(`thrice ${at % 6}`)),
    ];
    const { survivors, sightings, distinct } = rarityOf(withLog(rows));
    expect({ sightings, distinct }).toEqual({ sightings: 39, distinct: 21 });
    expect(survivors.value).toBeCloseTo(26.142857, 6);
    expect(survivors.low).toBeCloseTo(22.13, 2);
    expect(survivors.high).toBeCloseTo(44.41, 2);
    expect(survivors.method).toBe("chao1");
    expect(survivors.inputs).toMatchObject({ distinct: 21, once: 9, twice: 6 });
    expect(survivors.sources).toEqual(["lists"]);
  });

  // Universal Rarity Scale, Q. D. Bowers, The Numismatist, June 1992: 17-32 is URS-6, 33-64 URS-7.
  it("classes the ends of the interval, and not its middle", () => {
    const rows = [
      ...times(9, (at) => seen(`once ${at}`)),
      ...times(12, (at) => seen(`twice ${at % 6}`)),
      ...times(18, (at) => seen(`thrice ${at % 6}`)),
    ];
    const { class: found } = rarityOf(withLog(rows));
    expect(found?.scale).toBe("universal");
    expect(found?.low).toMatch(/6$/);
    expect(found?.high).toMatch(/7$/);
  });

  it("is withheld where every example was seen once, and says that at least so many survive", () => {
    const { survivors, survivalRate } = rarityOf(withLog([seen("a"), seen("b"), seen("c")]));
    expect(survivors).toMatchObject({ value: null, low: null, high: null });
    expect(survivors.insufficient).toContain("at least 3 survive");
    expect(survivalRate.value).toBeNull();
  });

  // Chao & Jost (2012) with f1 = n and f2 = 0, by hand: 1 - 1/3; 1 - 16/18.
  it.each([
    [2, 2 / 3],
    [5, 1 / 9],
  ])(
    "of %d sightings of as many examples no survivors are given, and the coverage is called empty",
    (count, share) => {
      const { survivors, coverage } = rarityOf(withLog(times(count, (at) => seen(`e${at}`))));
      expect(survivors.value).toBeNull();
      expect(survivors.insufficient).toMatch(/seen only once/);
      expect(coverage.value).toBeCloseTo(share, 12);
      expect(coverage.caveats.join(" ")).toMatch(/No example was seen a second time/);
    },
  );

  it("is withheld of a single sighting, and so is its coverage, which the formula would call complete", () => {
    const { survivors, coverage } = rarityOf(withLog([seen("a")]));
    expect(survivors.insufficient).toMatch(/at least 1 survives/);
    expect(coverage).toMatchObject({ value: null, low: null, high: null });
    expect(coverage.insufficient).toBe(
      "A single sighting does not tell how likely it is that the next one is of a known example.",
    );
    expect(coverage.caveats.join()).not.toMatch(/second time/);
  });

  it("is withheld without a sighting", () => {
    const { survivors, coverage } = rarityOf(withLog([]));
    expect([survivors.value, coverage.value]).toEqual([null, null]);
    expect(survivors.insufficient).toMatch(/No sighting/);
  });

  // Published check B4: lists of 10 and 15 with 5 in common: 28.333333, 22.385262 to 49.113973 [R].
  it("compares exactly two lists", () => {
    const rows = [
      ...times(10, (at) => seen(`x${at}`, "2001", { list: "north" })),
      ...times(15, (at) => seen(`x${at + 5}`, "2002", { list: "south" })),
    ];
    const { survivorsTwoList } = rarityOf(withLog(rows));
    expect(survivorsTwoList.value).toBeCloseTo(28.333333, 6);
    expect(survivorsTwoList.low).toBeCloseTo(22.385262, 5);
    expect(survivorsTwoList.high).toBeCloseTo(49.113973, 5);
    const third = rarityOf(withLog([...rows, seen("y", "2003", { list: "east" })]));
    expect(third.survivorsTwoList.value).toBeNull();
    expect(third.survivorsTwoList.insufficient).toContain("3 lists");
  });

  it("names the conflict where more are estimated to survive than were made", () => {
    const rows = [...times(6, (at) => seen(`once ${at}`)), ...times(4, (at) => seen(`twice ${at % 2}`))];
    // By hand: 8 + 6·5/(2·3) = 13.
    const { survivors, survivalRate, made } = rarityOf(
      withLog(rows, `made: { count: 10, source: ledger }\n${two}`),
    );
    expect(survivors.value).toBeCloseTo(13, 12);
    expect(made.value).toBe(10);
    expect(survivors.caveats[0]).toContain("than the 10 that were made");
    expect(survivalRate.value).toBeNull();
    expect(survivalRate.insufficient).toMatch(/More are estimated to survive than were made/);
  });

  it("divides survivors by those made, end by end", () => {
    const rows = [...times(6, (at) => seen(`once ${at}`)), ...times(4, (at) => seen(`twice ${at % 2}`))];
    const { survivors, survivalRate } = rarityOf(
      withLog(rows, `made: { count: 100, source: ledger }\n${two}`),
    );
    expect(survivalRate.value).toBeCloseTo(0.13, 12);
    expect(survivalRate.low).toBeCloseTo((survivors.low ?? 0) / 100, 12);
    expect(survivalRate.high).toBeCloseTo((survivors.high ?? 0) / 100, 12);
  });
});

describe("made", () => {
  const serials = (numbers: readonly number[], prefix = "") =>
    numbers.map((number) => seen("", "2001", { serial: `${prefix}${number}` }));

  it("is what the record says, with its source", () => {
    const { made } = rarityOf(withLog([], `made: { count: 412, source: ledger, page: 31 }\n${two}`));
    expect(made).toMatchObject({
      value: 412,
      low: 412,
      high: 412,
      method: "documented",
      sources: ["ledger"],
    });
  });

  it("of a record that gives a range is that range, and no number between", () => {
    const { made } = rarityOf(withLog([], `made: { low: 400, high: 450, source: ledger }\n${two}`));
    expect(made).toMatchObject({ value: null, low: 400, high: 450 });
    expect(made.insufficient).toContain("400 to 450");
  });

  it("sums the lengths of closed ranges", () => {
    const ranges =
      "serials:\n  - { prefix: H, from: 2001, to: 2412, source: ledger }\n  - { prefix: K, from: 1, to: 50, source: ledger }\n";
    expect(rarityOf(withLog([], ranges + two)).made).toMatchObject({ value: 462, low: 462, high: 462 });
  });

  // The textbook sample 2, 6, 7, 14: 16.5; one-sided 95 % upper end 27. Published check B1 [P][R].
  it("of an open range is estimated from the serials seen in it", () => {
    const { made } = rarityOf(
      withLog(serials([2, 6, 7, 14]), `serials: [{ from: 1, source: ledger }]\n${two}`),
    );
    expect(made.value).toBeCloseTo(16.5, 12);
    expect([made.low, made.high]).toEqual([14, 27]);
    expect(made.caveats.join()).toMatch(/random sample/);
  });

  // Goodman (1954), JASA 49: 97-112: 31 serials, first number unknown, 2883.266667. Published check B1 [P].
  it("of a range whose start is not known is estimated from the span", () => {
    const goodman =
      "83 135 274 380 668 895 955 964 1113 1174 1210 1344 1387 1414 1610 1668 1689 1756 1865 1874 1880 1936 2005 2006 2065 2157 2220 2224 2396 2543 2787";
    const { made } = rarityOf(
      withLog(
        serials(goodman.split(" ").map(Number), "T"),
        `serials: [{ prefix: T, source: ledger }]\n${two}`,
      ),
    );
    expect(made.value).toBeCloseTo(2883.266667, 5);
    expect(made.low).toBe(2705);
  });

  it.each([
    ["too few serials", [3], "serials: [{ from: 1, source: ledger }]", /1 serial .* needs 2/],
    [
      "too few for an unknown start",
      [3, 9],
      "serials: [{ prefix: '', source: ledger }]",
      /2 serials .* needs 3/,
    ],
    [
      "skipped numbers",
      [3, 9],
      "serials: [{ from: 1, to: 20, skipped: true, source: ledger }]",
      /left unused/,
    ],
    ["no range", [3, 9], "", /No record/],
  ])("is withheld for %s", (_, numbers, ranges, why) => {
    const { made } = rarityOf(withLog(serials(numbers), `${ranges}\n${two}`));
    expect(made.value).toBeNull();
    expect(made.insufficient).toMatch(why);
  });

  it("never uses a serial that is masked, since the largest could be read off", () => {
    const range = `serials: [{ from: 1, source: ledger }]\n${two}`;
    const log = serials([2, 6, 7]);
    const masked = withLog(log, range, { "content/items/one/index.md": item('serial: "900"') });
    const shown = withLog(log, range, {
      "content/items/one/index.md": item('serial: "900"\npublish: { serial: shown }'),
    });
    expect(rarityOf(masked).made.low).toBe(7);
    expect(rarityOf(shown).made.low).toBe(900);
  });
});

describe("part by part, and as complete as this one", () => {
  // Published check B8: 15 examples with 12 11 11 10 9 9 8 7 7 5 4 12 10 6 3 of 12 parts; at least 10: 6 of 15,
  // Wilson 0.198245 to 0.642532; at least 12: 2 of 15, 0.037361 to 0.378820.
  const present = [12, 11, 11, 10, 9, 9, 8, 7, 7, 5, 4, 12, 10, 6, 3];
  const twelve = `parts:\n${times(12, (at) => ({ at: `${at}` }))
    .map(({ at }) => `  p${at}: { standing: issued }`)
    .join("\n")}\n`;
  const rows = present.map((count, at) =>
    seen(`x${at}`, `${2001 + at}`, {
      kind: "offer",
      present: Array.from({ length: count }, (_, part) => `p${part}`).join(";"),
      absent: count === 12 ? "" : "rest",
    }),
  );
  const withItem = (parts: number, name: string) =>
    withLog(
      rows.filter((_, at) => `x${at}` !== name),
      twelve,
      {
        "content/items/one/index.md": item(
          `example: ${name}\nparts:\n${Array.from({ length: 12 }, (_, part) => `  p${part}: ${part < parts ? "present" : "absent"}`).join("\n")}`,
        ),
      },
    );

  it("is the share of the fully recorded examples, with this one counted in", () => {
    const ten = itemRarityOf(withItem(10, "x3"));
    expect(ten.asComplete.value).toBeCloseTo(6 / 15, 12);
    expect(ten.asComplete.low).toBeCloseTo(0.198245, 6);
    expect(ten.asComplete.high).toBeCloseTo(0.642532, 6);
    expect(ten.rank).toEqual({ place: 5, of: 15, sharing: 2 });
    const whole = itemRarityOf(withItem(12, "x0"));
    expect(whole.asComplete.value).toBeCloseTo(2 / 15, 12);
    expect(whole.asComplete.low).toBeCloseTo(0.037361, 6);
    expect(whole.asComplete.high).toBeCloseTo(0.37882, 6);
    expect(whole.rank).toEqual({ place: 1, of: 15, sharing: 2 });
  });

  it("leaves out an example of which some part is not recorded", () => {
    const data = withLog([...rows, seen("unknown", "2020", { present: "p0" })], twelve, {
      "content/items/one/index.md": item("example: fresh\ncensus: false\nparts: { p0: present }"),
    });
    expect(itemRarityOf(data).rank).toEqual({ place: 16, of: 16, sharing: 1 });
  });

  // Published check B2: 0 of 20 would be 0 to 0.161125; here p11 is whole in 2 of 15.
  it("gives each part's share among the examples that say something of it", () => {
    const { parts } = rarityOf(withLog(rows, twelve));
    expect(parts.p11?.inputs).toEqual({ having: 2, recorded: 15 });
    expect(parts.p11?.low).toBeCloseTo(0.037361, 6);
    expect(rarityOf(withLog([seen("a")], twelve)).parts.p0?.insufficient).toMatch(/No sighting says/);
  });
});

describe("appearance and wait", () => {
  const settings = (watching: string): Files => ({
    "content/collection.yaml": `title: T\nurl: https://example.org/\n${watching}\n`,
  });

  // Published check B3: rate of 3 in T; exact 95 % limits of a count of 3 are 0.618672 and 8.767273 [R].
  it("divides new offers by the years watched", () => {
    const rows = [
      seen("a", "2001", { kind: "offer" }),
      seen("a", "2001", { kind: "offer", relisted: "true" }),
      seen("b", "2005", { kind: "offer" }),
      seen("c", "2010", { kind: "offer" }),
      seen("d", "1990", { kind: "offer" }),
      seen("e", "2006", { kind: "record" }),
    ];
    const { appearance, wait } = rarityOf(withLog(rows, two, settings("watching: 2001/2010")));
    expect(appearance.inputs).toMatchObject({ offers: 3, years: 10 });
    expect(appearance.value).toBeCloseTo(0.3, 12);
    expect(appearance.low).toBeCloseTo(0.0618672, 7);
    expect(appearance.high).toBeCloseTo(0.8767273, 7);
    // The median by hand: 10(2^(1/3.5) − 1).
    expect(wait.value).toBeCloseTo(10 * (2 ** (1 / 3.5) - 1), 12);
  });

  // Published check B3: nothing in 8 years: 0 to 0.461110 [R]; a median wait of 24 years, and 3192 with 95 % below it [R].
  it("has an upper end even where nothing was offered, and a wait that rests on the years alone", () => {
    const none = (confidence: number) =>
      rarityOf(withLog([seen("a", "2003")], two, settings(`watching: 2001/2008\nconfidence: ${confidence}`)));
    const { appearance } = none(0.95);
    expect(appearance).toMatchObject({ value: 0, low: 0 });
    expect(appearance.high).toBeCloseTo(0.46111, 5);
    const { wait } = none(0.9);
    expect(wait.value).toBeCloseTo(24, 10);
    expect(wait.high).toBeCloseTo(3192, 8);
    for (const { caveats, insufficient } of [appearance, wait]) {
      expect(insufficient).toBeNull();
      expect(caveats[0]).toBe(
        "No such offer is recorded in the 8 years watched: the figure rests on those years alone.",
      );
    }
  });

  it("takes the years of the whole log where nobody says which were watched, and says so", () => {
    const { appearance } = rarityOf(withLog([seen("a", "2001", { kind: "offer" }), seen("b", "2004")]));
    expect(appearance.inputs).toMatchObject({ offers: 1, years: 4, firstYear: 2001, lastYear: 2004 });
    expect(appearance.caveats.join()).toMatch(/Nobody has said in which years .* the log stands for them/);
    expect(rarityOf(withLog([])).appearance.insufficient).toMatch(/years/);
  });

  // By hand: four offers in the fifteen years 2001 to 2015.
  it("takes no years from a date of a century, nor from what was only mentioned, and does not count the vague offer", () => {
    const offer = (example: string, year: string) => seen(example, year, { kind: "offer" });
    const rows = [
      ...["2001", "2006-05", "2011", "2015"].map((year) => offer(`e${year}`, year)),
      offer("vague", "19XX"),
      seen("old", "1890", { kind: "mention" }),
    ];
    const { appearance } = rarityOf(withLog(rows));
    expect(appearance.inputs).toMatchObject({ offers: 4, years: 15, firstYear: 2001, lastYear: 2015 });
    expect(appearance.value).toBeCloseTo(4 / 15, 12);
  });

  it("waits longer for one as complete", () => {
    const rows = [
      seen("a", "2001", { kind: "offer", present: "rest" }),
      seen("b", "2004", { kind: "offer", present: "body", absent: "tray" }),
      seen("c", "2010", { kind: "offer" }),
    ];
    const data = withLog(rows, two, {
      ...settings("watching: 2001/2010"),
      "content/items/one/index.md": item("parts: { body: present, tray: present }"),
    });
    expect(itemRarityOf(data).asCompleteWait.inputs).toMatchObject({ offers: 1, years: 10 });
    expect(rarityOf(data).appearance.inputs).toMatchObject({ offers: 3 });
  });
});
