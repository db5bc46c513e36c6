import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { completenessInterval, completenessMark } from "../../shared/plots/completeness-interval.ts";
import { type Custody, custodyLine } from "../../shared/plots/custody/custody-line.ts";
import { type LikenedOutfit, likenessStrips } from "../../shared/plots/likeness-strips.ts";
import { partRates, type RatedPart } from "../../shared/plots/part-rates.ts";
import { rangesSideBySide, serialRanges } from "../../shared/plots/serials/serial-ranges.ts";
import { sightingsOverYears } from "../../shared/plots/sightings/sightings-over-years.ts";
import type { PublishedEvent, PublishedSerialRange } from "../../shared/publication/published.ts";
import { all, type Element, numberOf, parseMarkup, rectangleOf, textOf, viewBoxOf } from "./drawing.ts";
import { name, words, yearsOf } from "./given.ts";
import { expectImage, expectSound } from "./sound-drawing.ts";

const options = { idPrefix: "plot", label: "What it shows", words, yearsOf };
const share = fc.double({ min: 0, max: 1, noNaN: true });
const runs = { numRuns: 80 };

function expectDrawings(markup: string): string {
  const drawings = expectSound(markup, "plot");
  expect(drawings).toHaveLength(2);
  const [wide, narrow] = drawings.map((svg) => expectImage(svg, "What it shows"));
  expect(wide).not.toBe("");
  expect(narrow).toBe(wide);
  return wide ?? "";
}

function expectDrawing(markup: string): string {
  const drawings = expectSound(markup, "plot");
  expect(drawings).toHaveLength(1);
  const text = drawings.map((svg) => expectImage(svg, "What it shows")).join();
  expect(text).not.toBe("");
  return text;
}

const firstDrawing = (markup: string): Element => {
  const [svg] = all(parseMarkup(markup), "svg");
  if (!svg) throw new Error("no drawing");
  return svg;
};

const ofClass = (svg: Element, name: string, className: string): Element[] =>
  all(svg, name).filter((each) => (each.attributes.get("class") ?? "").split(" ").includes(className));

describe("completenessInterval", () => {
  it("has room for its labels, whatever the interval", () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        expectDrawings(completenessInterval({ low: Math.min(a, b), high: Math.max(a, b) }, options));
      }),
      runs,
    );
  });

  it("is solid as far as is certain, hatched as far as is possible", () => {
    const svg = firstDrawing(completenessInterval({ low: 0.25, high: 0.75 }, options));
    const { width } = viewBoxOf(svg);
    const [solid] = ofClass(svg, "rect", "plot-solid").map(rectangleOf);
    const [hatching] = ofClass(svg, "path", "surface-hatch");
    const ends = [...(hatching?.attributes.get("d") ?? "").matchAll(/[ML]([\d.]+) /g)].map(([, x]) =>
      Number(x),
    );
    expect((solid?.width ?? 0) / width).toBeCloseTo(0.25, 2);
    expect(Math.min(...ends) / width).toBeCloseTo(0.25, 2);
    expect(Math.max(...ends) / width).toBeCloseTo(0.75, 2);
  });

  it("says one number where nothing is uncertain", () => {
    const texts = all(firstDrawing(completenessInterval({ low: 0.5, high: 0.5 }, options)), "text").map(
      textOf,
    );
    expect(texts.filter((text) => text.includes("possible"))).toEqual([]);
  });

  it.each([
    // Whatever they are rounded to: these two are 81 percent both, to the nearest.
    [0.806, 0.814, "80% of the outfit by weight is certainly there; up to 82% is possible."],
    [0.806, 0.806, "81% of the outfit by weight is there, and nothing is uncertain."],
  ])("says of %d to %d whether anything is uncertain", (low, high, said) => {
    expect(expectDrawings(completenessInterval({ low, high }, options))).toBe(said);
  });

  it("has a mark for lists, silent and without ids", () => {
    const markup = completenessMark({ low: 0.3, high: 0.6 });
    expect(firstDrawing(markup).attributes.get("aria-hidden")).toBe("true");
    expect(markup).not.toMatch(/\sid=|style=/);
  });
});

describe("partRates", () => {
  const rated: fc.Arbitrary<RatedPart> = fc.record(
    {
      id: fc.constant("constructor"),
      name,
      quantity: fc.integer({ min: 1, max: 12 }),
      rate: fc.option(fc.tuple(share, share, share), { nil: null }).map((ends) => {
        const [low = null, value = null, high = null] = ends ? [...ends].sort((a, b) => a - b) : [];
        return { value, low, high, unit: "share" as const };
      }),
    },
    { requiredKeys: ["id", "name", "quantity", "rate"] },
  );

  it("has room for any parts", () => {
    fc.assert(
      fc.property(fc.array(rated, { minLength: 1, maxLength: 40 }), (parts) => {
        expectDrawings(partRates(parts, options));
      }),
      runs,
    );
  });

  it("puts the scarcest first, and says of what nothing is recorded", () => {
    const part = (id: string, value: number | null): RatedPart => ({
      id,
      name: id,
      quantity: 1,
      rate: { value, low: value, high: value, unit: "share" },
    });
    const markup = partRates([part("strap", 0.9), part("key", null), part("jet", 0.1)], options);
    const texts = all(firstDrawing(markup), "text").map(textOf);
    expect(texts.filter((text) => ["strap", "key", "jet"].includes(text))).toEqual(["jet", "strap", "key"]);
    expect(texts).toContain(words.plots.partRates.withheld);
    expect(expectDrawings(markup)).toBe("jet: 10%. strap: 90%. key: not known.");
  });

  it("places the dot and the ends of its line on the scale", () => {
    const rate = { value: 0.5, low: 0.25, high: 1, unit: "share" as const };
    const svg = firstDrawing(partRates([{ id: "jet", name: "Jet", quantity: 1, rate }], options));
    const ends = (className: string) => {
      const [path] = ofClass(svg, "path", className);
      const [, from, to] = /^M([\d.]+) [\d.]+H([\d.]+)/.exec(path?.attributes.get("d") ?? "") ?? [];
      return [Number(from), Number(to)] as const;
    };
    const [zero, one] = ends("plot-leader");
    const [low, high] = ends("plot-interval");
    const [dot] = all(svg, "circle");
    const along = (x: number) => (x - zero) / (one - zero);
    expect(along(low)).toBeCloseTo(0.25, 2);
    expect(along(high)).toBeCloseTo(1, 2);
    expect(along(dot ? numberOf(dot, "cx") : 0)).toBeCloseTo(0.5, 2);
  });
});

describe("serialRanges", () => {
  const serial = fc.integer({ min: 0, max: 400_000 });
  const range: fc.Arbitrary<PublishedSerialRange> = fc
    .tuple(
      fc.constantFrom("", "H", "No. ", "SERIES-"),
      serial,
      serial,
      fc.constantFrom("both", "from", "to", "none"),
      fc.boolean(),
      fc.option(fc.constantFrom("1905/1908", "1931~", "1940")),
    )
    .map(([prefix, a, b, known, skipped, made]) => ({
      prefix,
      from: known === "both" || known === "from" ? Math.min(a, b) : null,
      to: known === "both" || known === "to" ? Math.max(a, b) : null,
      made,
      skipped,
      source: null,
      page: null,
      note: null,
    }));
  const seen = fc
    .tuple(fc.constantFrom("", "H", "h ", "No.", "X"), serial)
    .map(([prefix, number]) => `${prefix}${number}`);

  it("has room for any ranges and serials", () => {
    const given = fc.tuple(
      fc.array(range, { maxLength: 12 }),
      fc.array(seen, { maxLength: 60 }),
      fc.option(seen),
    );
    fc.assert(
      fc.property(given, ([ranges, serials, own]) => {
        expectDrawings(serialRanges(ranges, { ...options, seen: serials, own }));
      }),
      runs,
    );
  });

  it("has room for two thousand serials", () => {
    const serials = Array.from({ length: 2000 }, (_, at) => `H${at * 7}`);
    const description = expectDrawings(
      serialRanges(
        [
          {
            prefix: "H",
            from: 1,
            to: null,
            made: null,
            skipped: false,
            source: null,
            page: null,
            note: null,
          },
        ],
        { ...options, seen: serials },
      ),
    );
    expect(description).toContain("1,999 serials seen");
  });

  const blocks = [
    {
      prefix: "S",
      from: 1001,
      to: 1140,
      made: "1905/1908",
      skipped: false,
      source: null,
      page: null,
      note: null,
    },
    {
      prefix: "S",
      from: 1141,
      to: 1286,
      made: "1909/1912",
      skipped: false,
      source: null,
      page: null,
      note: null,
    },
  ];

  it("marks this one only where its serial is shown", () => {
    const own = (serial: string | null) =>
      ofClass(firstDrawing(serialRanges(blocks, { ...options, seen: [], own: serial })), "path", "plot-own")
        .length;
    expect(own("S1118")).toBe(1);
    expect(own("s 1118")).toBe(1);
    // As shared/publication/masking.ts writes a masked one.
    expect(own("S11\u2022\u2022")).toBe(0);
    expect(own(null)).toBe(0);
  });

  it("counts a serial once however it is written, and those that lie nowhere apart", () => {
    const seenTwice = ["S1003", "s 1003", "S1200", "S9999", "S12\u2022\u2022"];
    expect(expectDrawings(serialRanges(blocks, { ...options, seen: seenTwice, own: null }))).toBe(
      "S1001 to S1140, made 1905 to 1908, 1 serial seen. S1141 to S1286, made 1909 to 1912, 1 serial seen. 1 serial outside these ranges.",
    );
  });

  it("ends an open range where the next of its prefix begins", () => {
    const open = [{ ...blocks[0], to: null }, blocks[1]] as PublishedSerialRange[];
    const seen = ["S1003", "S1200", "S1290"];
    expect(expectDrawings(serialRanges(open, { ...options, seen, own: null }))).toBe(
      "from S1001, made 1905 to 1908, 1 serial seen. S1141 to S1286, made 1909 to 1912, 1 serial seen. 1 serial outside these ranges.",
    );
  });

  it("takes a serial for the one that the estimate takes it for, whatever parts its letters from its number", () => {
    const railway = { ...blocks[0], prefix: "HQ", from: 1, to: 200, made: null } as PublishedSerialRange;
    // HQ77 three times and HQ 78, as one log writes them and another.
    const seen = ["HQ-077", "HQ77", "hq/0077", "HQ.78"];
    expect(expectDrawings(serialRanges([railway], { ...options, seen }))).toBe(
      "HQ1 to HQ200, 2 serials seen.",
    );
    const outside = ["HQ-0901", "HQ901", "HQ 901"];
    expect(expectDrawings(serialRanges([railway], { ...options, seen: outside }))).toBe(
      "HQ1 to HQ200, 0 serials seen. 1 serial outside these ranges.",
    );
  });

  it("says of several variants which serial was seen of which, on one scale", () => {
    const series = blocks.map((range, at) => ({
      name: `Pattern ${at + 1}`,
      ranges: [range],
      seen: ["S1003"],
    }));
    const markup = rangesSideBySide(series, options);
    expect(expectDrawings(markup)).toBe(
      "Pattern 1: S1001 to S1140, made 1905 to 1908, 1 serial seen. Pattern 2: S1141 to S1286, made 1909 to 1912, 0 serials seen. 1 serial in a range of a variant other than its own.",
    );
    const [first, second] = ofClass(firstDrawing(markup), "rect", "plot-rail").map(rectangleOf);
    expect((first?.x ?? 0) + (first?.width ?? 0)).toBeCloseTo(second?.x ?? 0, 0);
  });

  it("says apart which serials lie in none of the ranges, and which in that of another variant", () => {
    const series = blocks.map((range, at) => ({
      name: `Pattern ${at + 1}`,
      ranges: [range],
      seen: at === 0 ? ["S1200", "S 1201", "S9"] : ["S1002", "S9", "s0009"],
    }));
    expect(expectDrawings(rangesSideBySide(series, options))).toBe(
      "Pattern 1: S1001 to S1140, made 1905 to 1908, 0 serials seen. Pattern 2: S1141 to S1286, made 1909 to 1912, 0 serials seen. 1 serial outside these ranges. 3 serials in a range of a variant other than their own.",
    );
  });

  it("draws the ranges of one prefix to one scale", () => {
    const rails = ofClass(
      firstDrawing(serialRanges(blocks, { ...options, seen: [] })),
      "rect",
      "plot-rail",
    ).map(rectangleOf);
    const [first, second] = rails;
    expect((first?.width ?? 0) / (second?.width ?? 1)).toBeCloseTo(140 / 146, 2);
    expect((first?.x ?? 0) + (first?.width ?? 0)).toBeCloseTo(second?.x ?? 0, 0);
  });
});

describe("sightingsOverYears", () => {
  const sightingKinds = ["offer", "record", "mention"] as const;
  const sighting = fc.record(
    {
      seen: fc.oneof(
        fc.integer({ min: 1890, max: 2026 }).map(String),
        fc.integer({ min: 1990, max: 2020 }).map((year) => `${year}/${year + 3}`),
        fc.constantFrom("", "1990/.."),
      ),
      kind: fc.constantFrom(...sightingKinds),
      reaches: fc.constantFrom(true, false, null),
    },
    { requiredKeys: ["seen", "kind"] },
  );

  it("has room for any sightings", () => {
    const watching = fc.constantFrom(null, "1998/2026", "2025/..", "/1900", "0001/2026");
    fc.assert(
      fc.property(fc.array(sighting, { maxLength: 200 }), watching, (sightings, watched) => {
        expectDrawings(sightingsOverYears(sightings, { ...options, watching: watched }));
      }),
      runs,
    );
  });

  const repeat = (count: number, seen: (at: number) => string) =>
    Array.from({ length: count }, (_, at) => ({
      seen: seen(at),
      kind: sightingKinds[at % 3] ?? "offer",
    }));

  it.each([0, 1, 2, 50, 300, 2000])("has room for %i sightings, in one year or in a century", (count) => {
    for (const seen of [() => "2020", (at: number) => String(1926 + (at % 100))]) {
      expectDrawings(sightingsOverYears(repeat(count, seen), options));
    }
  });

  it("draws a mark for each where there is room, and says so where there is not", () => {
    const marks = (markup: string) =>
      ["disc", "square", "triangle"].flatMap((shape) =>
        ofClass(firstDrawing(markup), "path", `plot-mark-${shape}`).flatMap(
          (path) => path.attributes.get("d")?.match(/M/g) ?? [],
        ),
      ).length;
    const few = sightingsOverYears(
      repeat(30, (at) => String(1990 + at)),
      options,
    );
    // Thirty, and three that the legend shows.
    expect(marks(few)).toBe(33);
    const many = sightingsOverYears(
      repeat(2000, () => "2020"),
      options,
    );
    expect(marks(many)).toBeLessThan(200);
    expect(all(firstDrawing(many), "text").map(textOf).join()).toMatch(
      /each mark stands for up to \d+ sightings/,
    );
  });

  /** How many marks of a class there are, each a subpath. */
  const marked = (markup: string, className: string) =>
    ofClass(firstDrawing(markup), "path", className).flatMap(
      (path) => path.attributes.get("d")?.match(/M/g) ?? [],
    ).length;

  it("shows by how far a mark is filled whether a level is reached, none is, or too little is recorded", () => {
    const sightings = [
      { seen: "1998", kind: "offer", reaches: true },
      { seen: "1998", kind: "offer", reaches: true },
      { seen: "1999", kind: "offer", reaches: false },
      { seen: "1999", kind: "record", reaches: null },
      { seen: "2001", kind: "mention", reaches: null },
      { seen: "2001", kind: "mention", reaches: null },
    ] as const;
    const markup = sightingsOverYears(sightings, options);
    expect(expectDrawings(markup)).toBe(
      "6 sightings in the log, 1998 to 2001: 3 offers, 1 record, 2 mentions. By what the log says of them, 2 reach a level of completeness, 1 reaches no level, 3 are too little recorded to say.",
    );
    expect(marked(markup, "plot-mark-filled")).toBe(2);
    expect(marked(markup, "plot-mark-half")).toBe(1);
    // The half-filled one has an outline of its own, and the legend an outline for each of the three kinds.
    expect(marked(markup, "plot-mark-hollow")).toBe(1 + 3 + 3);
    expect(all(firstDrawing(markup), "text").map(textOf).join()).toMatch(
      /filled: reaches a level of completeness,half filled: reaches none,hollow: too little recorded to say/,
    );
  });

  it("stacks two thousand by what is known of them, and still counts them in words", () => {
    const sightings = repeat(2000, (at) => String(2000 + (at % 20))).map((each, at) => ({
      ...each,
      reaches: [true, false, null, null][at % 4] ?? null,
    }));
    const markup = sightingsOverYears(sightings, options);
    expect(expectDrawings(markup)).toContain(
      "500 reach a level of completeness, 500 reach no level, 1,000 are too little recorded to say.",
    );
    for (const filling of ["filled", "half", "hollow"])
      expect(marked(markup, `plot-mark-${filling}`)).toBeGreaterThan(20);
  });

  it("tells in words what it shows", () => {
    const sightings = [
      { seen: "1998", kind: "offer" },
      { seen: "2003-05", kind: "record" },
      { seen: "2003", kind: "offer" },
      { seen: "", kind: "mention" },
    ] as const;
    expect(expectDrawings(sightingsOverYears(sightings, options))).toBe(
      "4 sightings in the log, 1998 to 2003: 2 offers, 1 record, 1 sighting without a year.",
    );
    expect(expectDrawings(sightingsOverYears([], options))).toBe("No sighting is recorded.");
  });
});

describe("likenessStrips", () => {
  const percents = fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 101 });
  const outfit: fc.Arbitrary<LikenedOutfit> = fc.record({
    name,
    counts: percents.chain((each) =>
      fc
        .array(fc.integer({ min: 1, max: 2000 }), { minLength: each.length, maxLength: each.length })
        .map((examples) =>
          each.toSorted((a, b) => a - b).map((percent, at) => [percent, examples[at] ?? 1] as const),
        ),
    ),
    thin: fc.nat({ max: 2000 }),
    nearest: fc.option(fc.record({ name, likeness: fc.double({ min: 0, max: 1, noNaN: true }) })),
  });
  const drawn = (outfits: readonly LikenedOutfit[], left = 0) =>
    likenessStrips(outfits, { ...options, left });

  it("has room for any outfits", () => {
    fc.assert(
      fc.property(fc.array(outfit, { maxLength: 24 }), fc.nat({ max: 2000 }), (outfits, left) => {
        // Of none there is nothing to tell.
        fc.pre(outfits.length + left > 0);
        expectDrawings(drawn(outfits, left));
      }),
      runs,
    );
  });

  const among = (count: number): LikenedOutfit => {
    const counts = new Map<number, number>();
    for (let at = 0; at < count; at++) counts.set((at * 37) % 101, (counts.get((at * 37) % 101) ?? 0) + 1);
    return {
      name: "Chest 7",
      counts: [...counts].sort(([a], [b]) => a - b),
      thin: 0,
      nearest: { name: "Chest 9", likeness: 1 },
    };
  };

  it.each([0, 1, 2, 50, 2000])("has a stroke for each percent at which any of %i others stand", (count) => {
    const markup = drawn([among(count)]);
    expectDrawings(markup);
    const strokes = ["plot-seen", "plot-own"].flatMap((className) =>
      ofClass(firstDrawing(markup), "path", className).flatMap(
        (path) => path.attributes.get("d")?.match(/M/g) ?? [],
      ),
    );
    // 37 and 101 have no divisor in common, so that no two of the first 101 stand at one percent.
    expect(strokes).toHaveLength(Math.min(count, 101));
    expect(all(firstDrawing(markup), "text").map(textOf).join(" ").includes("stands for several")).toBe(
      count > 101,
    );
  });

  it("tells in words what it shows", () => {
    const outfits: LikenedOutfit[] = [
      {
        name: "Chest 7",
        counts: [
          [41, 1],
          [80, 2],
          [93, 1],
        ],
        thin: 1,
        nearest: { name: "Chest 9", likeness: 0.93 },
      },
    ];
    expect(expectDrawings(drawn(outfits, 3))).toBe(
      "Chest 7: 4 others compared, 41% to 93% alike; most alike: Chest 9, 93%; 1 compared on too little is left out. 3 further outfits not drawn.",
    );
  });
});

describe("custodyLine", () => {
  const event = (date: string, what: string): PublishedEvent => ({
    date,
    event: what,
    from: null,
    to: null,
    holder: null,
    place: null,
    evidence: null,
    source: null,
    price: null,
    note: null,
  });
  const year = fc.integer({ min: 1700, max: 2026 });
  const date = fc.oneof(
    year.map(String),
    fc.tuple(year, fc.nat({ max: 60 })).map(([from, years]) => `${from}/${from + years}`),
    fc.constantFrom("", "1950/.."),
  );
  const custody: fc.Arbitrary<Custody> = fc.record({
    events: fc.array(
      fc.tuple(date, name).map(([when, what]) => event(when, what)),
      { maxLength: 30 },
    ),
    gaps: fc.array(
      fc.tuple(year, fc.nat({ max: 80 }), fc.boolean()).map(([from, years, known]) => ({
        from,
        to: from + years,
        years,
        longest: known ? years + 1.5 : null,
      })),
      { maxLength: 6 },
    ),
  });

  it("has room for any events and gaps", () => {
    fc.assert(
      fc.property(custody, fc.option(date), fc.option(date), (given, issued, examined) => {
        expectDrawing(custodyLine(given, { ...options, issued, examined }));
      }),
      runs,
    );
  });

  it("has what was in one year in the order of its days", () => {
    const given: Custody = { events: [event("2025-09-10", "sold"), event("2025", "lent")], gaps: [] };
    const markup = custodyLine(given, { ...options, examined: "2025-01-22" });
    expect(expectDrawing(markup)).toBe("2025: lent. 22 January 2025: examined. 10 September 2025: sold.");
  });

  it("begins with what began first, however long it lasted", () => {
    const given: Custody = { events: [event("1884", "sold"), event("1884/1920", "held")], gaps: [] };
    const markup = custodyLine(given, { ...options, issued: "1881/1889" });
    expect(expectDrawing(markup)).toBe("1881 to 1889: issued. 1884: sold. 1884 to 1920: held.");
  });

  it("has each date of a list by itself", () => {
    const given: Custody = { events: [event("{1930,1980..1982}", "shown")], gaps: [] };
    const markup = custodyLine(given, options);
    expect(expectDrawing(markup)).toBe("1930: shown. 1980 to 1982: shown.");
  });

  it("breaks the line through a gap, and says how long it is", () => {
    const given: Custody = {
      events: [event("1912", "delivered"), event("1988", "sold"), event("", "lent")],
      gaps: [{ from: 1912, to: 1988, years: 75, longest: 77 }],
    };
    const markup = custodyLine(given, { ...options, issued: "1905/1912", examined: "2026" });
    const [gap] = ofClass(firstDrawing(markup), "path", "plot-custody-gap");
    const [solid] = ofClass(firstDrawing(markup), "path", "plot-custody");
    expect(gap?.attributes.get("d")?.match(/M/g)).toHaveLength(1);
    expect(solid?.attributes.get("d")?.match(/M/g)).toHaveLength(2);
    expect(expectDrawing(markup)).toBe(
      "1905 to 1912: issued. 1912: delivered. 1912 to 1988: no custody recorded for 75 to 77 years. 1988: sold. 2026: examined. 1 event without a date.",
    );
  });
});
