import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import { type Figure, figure, pointFigure, withheld } from "../../../shared/assessments/figure.ts";
import {
  assessAppearance,
  assessWait,
  isCountedOffer,
  offersIn,
  yearsWatched,
} from "../../../shared/assessments/rarity/appearance.ts";
import { assessItemRarity, survivorsAsComplete } from "../../../shared/assessments/rarity/as-complete.ts";
import { examplesOf } from "../../../shared/assessments/rarity/examples.ts";
import { assessLevelRarity } from "../../../shared/assessments/rarity/level-rarity.ts";
import { assessPartRate } from "../../../shared/assessments/rarity/part-rate.ts";
import { rankExamples } from "../../../shared/assessments/rarity/ranked-examples.ts";
import { statement } from "../../../shared/assessments/statement.ts";
import { neededBy } from "../../../shared/records/needed-parts.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import type { Level } from "../../../shared/records/variant.ts";
import { date, line, part, sighting, variant } from "../properties/given.ts";
import { item } from "../properties/given-collection.ts";

const reference = variant("a", {
  parts: [
    part("body", { standing: "core", weight: 3, group: "instrument" }),
    part("tray", { group: "case" }),
    part("oil", { standing: "consumable" }),
  ],
});
/** Each row of an example of its own, known by name. */
const logged = (...rows: Partial<Sighting>[]) =>
  examplesOf(
    reference,
    rows.map((row, at) => sighting({ example: `row ${at}`, ...row })),
    [],
  );
/** The same without their names. */
const nameless = (...rows: Partial<Sighting>[]) => examplesOf(reference, rows.map(sighting), []);
const whole = { present: ["rest"], source: "whole" };
const bare = { present: ["body"], absent: ["tray"], source: "bare" };
const box = { present: ["tray"], absent: ["body"], source: "box" };
const unknown = { source: "unknown" };
const offered = (row: Partial<Sighting>, year: string): Partial<Sighting> => ({
  ...row,
  kind: "offer",
  seen: date(year),
});
const watched = { first: 2001, last: 2010, declared: true };
const says = (found: Figure | undefined) => found?.caveats.map((each) => each.says);

const basis = { unit: "examples", confidence: 0.95, method: "chao1", inputs: {} } as const;
const survivors = figure(
  { value: 20, low: 10, high: 40 },
  { ...basis, sources: ["log"], caveats: [statement("lower-bound-only")] },
);
const noSurvivors = withheld(statement("no-sighting"), basis);

describe("the years watched", () => {
  const log = (...rows: string[]) =>
    rows.map((row) => {
      const [seen = "", kind = "record"] = row.split(" ");
      return { seen: date(seen), kind };
    });

  it("are those that are stated, whatever the log has", () => {
    expect(yearsWatched(date("2001/2010"), log("1990"))).toEqual(watched);
    expect(yearsWatched(date("2001-05"), [])).toEqual({ first: 2001, last: 2001, declared: true });
  });

  it.each(["2001/..", "../2010", "2001/", "/2010"])("are those of the log where %s has no end", (stated) => {
    expect(yearsWatched(date(stated), log("1990"))).toEqual({ first: 1990, last: 1990, declared: false });
  });

  it.each<[string, readonly string[], number, number]>([
    ["from the first to the last", ["2004", "2001-03 offer", "2003"], 2001, 2004],
    ["of dates that have both ends", ["2001", "1980/..", "2030/", "../1970"], 2001, 2001],
    ["by dates of a year, not of more", ["2001", "2003-05-02", "19XX offer", "2002/2009"], 2001, 2003],
    ["by dates of more where there are no others", ["199X", "2002/2009 offer"], 1990, 2009],
    ["by offers and records, and not by mentions", ["2001 offer", "2004", "1890 mention"], 2001, 2004],
    ["by mentions where there is nothing else", ["1890 mention", "1902 mention", "188X mention"], 1890, 1902],
    ["by a vague record sooner than by a mention", ["199X", "1890 mention"], 1990, 1999],
  ])("are those of the log, %s", (_, rows, first, last) => {
    expect(yearsWatched(undefined, log(...rows))).toEqual({ first, last, declared: false });
  });

  it("are none where the log has no date with both ends", () => {
    expect(yearsWatched(undefined, log("1980/..", "2030/", "../1970"))).toBeNull();
    expect(yearsWatched(undefined, [])).toBeNull();
  });
});

describe("an offer is counted", () => {
  it.each<[string, Partial<Sighting>, boolean]>([
    ["within the years", offered({}, "2005"), true],
    ["in the first of them", offered({}, "2001-01"), true],
    ["in the last of them", offered({}, "2010-12"), true],
    ["before them", offered({}, "2000"), false],
    ["after them", offered({}, "2011"), false],
    ["perhaps before them", offered({}, "2000/2002"), false],
    ["perhaps after them", offered({}, "2009/2011"), false],
    ["on a date without an end", offered({}, "2005/.."), false],
    ["listed again", { ...offered({}, "2005"), relisted: true }, false],
    ["a record", { ...offered({}, "2005"), kind: "record" }, false],
    ["a mention", { ...offered({}, "2005"), kind: "mention" }, false],
  ])("%s: %o", (_, row, expected) => {
    expect(isCountedOffer(sighting(row), watched)).toBe(expected);
    expect(isCountedOffer(sighting(row), null)).toBe(false);
  });
});

describe("offers a year, and the years until the next", () => {
  const offers = ["2002", "2005", "2010"].map((year) => sighting(offered({ source: `s${year}` }, year)));

  // Published check B3: a count of 3 has the exact limits 0.618672 and 8.767273 [R]; the median wait by hand.
  it("are estimated from the offers and the years", () => {
    const appearance = assessAppearance(offersIn(offers), watched, 0.95);
    expect(appearance.low).toBeCloseTo(0.0618672, 7);
    expect(appearance.high).toBeCloseTo(0.8767273, 7);
    const shared = {
      confidence: 0.95,
      inputs: { offers: 3, years: 10, firstYear: 2001, lastYear: 2010 },
      sources: ["s2002", "s2005", "s2010"],
      caveats: [statement("assumes-constant-rate")],
      insufficient: null,
    };
    expect(appearance).toMatchObject({ ...shared, value: 0.3, unit: "offers a year", method: "garwood" });
    const wait = assessWait(offersIn(offers), watched, 0.95);
    expect(wait).toMatchObject({ ...shared, unit: "years", method: "gamma-poisson" });
    expect(wait.value).toBeCloseTo(10 * (2 ** (1 / 3.5) - 1), 12);
  });

  it("say so where the years are only those of the log", () => {
    for (const assess of [assessAppearance, assessWait])
      expect(says(assess(offersIn(offers), { ...watched, declared: false }, 0.95))).toEqual([
        "assumes-constant-rate",
        "years-from-log",
      ]);
  });

  it("are withheld where no year was watched", () => {
    for (const assess of [assessAppearance, assessWait])
      expect(assess(offersIn([]), null, 0.95)).toMatchObject({
        value: null,
        inputs: { offers: 0, years: 0, firstYear: null, lastYear: null },
        caveats: [statement("assumes-constant-rate")],
        insufficient: statement("no-year-watched"),
      });
  });
});

describe("a part's share", () => {
  // Wilson (1927), published check B8: 2 of 15 has 0.037361 to 0.378820.
  it("is that of the examples of which its state is recorded", () => {
    const rows = [...Array.from({ length: 13 }, () => box), bare, whole, unknown];
    const found = assessPartRate(part("body"), logged(...rows), 0.95);
    expect(found).toMatchObject({
      value: 2 / 15,
      unit: "share",
      confidence: 0.95,
      method: "wilson",
      inputs: { having: 2, recorded: 15 },
      sources: ["bare", "box", "whole"],
      caveats: [statement("assumes-even-chance")],
      insufficient: null,
    });
    expect(found.low).toBeCloseTo(0.037361, 6);
    expect(found.high).toBeCloseTo(0.37882, 6);
  });

  it("leaves out what was never issued, or is not sure, and counts what is there in part as not there", () => {
    const of = (share: "not-issued" | { low: number; high: number }) =>
      logged(unknown).map((example) => ({ ...example, shares: new Map([["tray", share]]) }));
    const found = assessPartRate(
      part("tray"),
      [
        ...of("not-issued"),
        ...of({ low: 0.5, high: 1 }),
        ...of({ low: 0.5, high: 0.5 }),
        ...of({ low: 1, high: 1 }),
      ],
      0.95,
    );
    expect(found.inputs).toEqual({ having: 1, recorded: 2 });
  });

  // Wilson (1927) for 2 of 6 at a confidence of 0.90, reckoned apart with z = 1.6448536269514722 (SciPy's norm.ppf).
  it("counts an accepted substitute as not there, however fully it stands in", () => {
    const exchanged = variant("a", { parts: [part("tray", { accepts: new Map([["tin tray", 1]]) })] });
    const standIn = item("one", {
      example: "e",
      examined: date("2005"),
      parts: new Map([["tray", [line("substitute", { model: "tin tray" })]]]),
    });
    const rows = [
      { example: "e", seen: date("2001"), present: ["tray"] },
      ...["f", "g"].map((example) => ({ example, present: ["tray"] })),
      ...["h", "i", "j"].map((example) => ({ example, absent: ["tray"] })),
    ];
    const examples = examplesOf(exchanged, rows.map(sighting), [
      { item: standIn, completeness: assessCompleteness(exchanged, standIn) },
    ]);
    const found = assessPartRate(part("tray"), examples, 0.9);
    expect(found.inputs).toEqual({ having: 2, recorded: 6 });
    expect(found.low).toBeCloseTo(0.117276, 6);
    expect(found.high).toBeCloseTo(0.652985, 6);
    // Seen with it before, and with what stands in for it now.
    expect(found.caveats[0]).toEqual(statement("sightings-differ", { examples: 1 }));
  });

  it("says how many of them may be one that was seen before", () => {
    const { inputs, caveats } = assessPartRate(
      part("body"),
      [...logged(whole), ...nameless(bare, box, unknown)],
      0.95,
    );
    expect(inputs).toEqual({ having: 2, recorded: 3, nameless: 2 });
    expect(caveats[0]).toEqual(statement("nameless-rows", { nameless: 2, rows: 3 }));
  });

  it("says of how many the sightings say both, and goes by the last", () => {
    const of = (example: string, year: string, row: Partial<Sighting>) => ({
      ...row,
      example,
      seen: date(year),
    });
    const rows = [of("e", "2001", bare), of("e", "2003", box), of("f", "2001", box), of("f", "2003", box)];
    const { inputs, caveats } = assessPartRate(part("body"), logged(...rows, of("f", "2004", unknown)), 0.95);
    expect(inputs).toEqual({ having: 0, recorded: 2 });
    expect(caveats[0]).toEqual(statement("sightings-differ", { examples: 1 }));
    const once = assessPartRate(part("oil"), logged(...rows), 0.95);
    expect(once.caveats).toEqual([statement("assumes-even-chance")]);
  });

  it("is withheld where nothing is recorded of it", () => {
    expect(assessPartRate(part("body"), logged(unknown), 0.95)).toMatchObject({
      value: null,
      inputs: { having: 0, recorded: 0 },
      insufficient: statement("nothing-recorded-of-part"),
    });
  });
});

const level = (needs: Partial<Level["needs"]>): Level => ({
  id: "level",
  name: "Level",
  needs: { standing: [], parts: [], groups: [], ...needs },
});

describe("a level of completeness", () => {
  it.each<[Partial<Level["needs"]>, string[]]>([
    [{ standing: ["core", "consumable"] }, ["body", "oil"]],
    [{ parts: ["tray"] }, ["tray"]],
    [{ groups: ["case"] }, ["tray"]],
    [{ standing: ["core"], parts: ["oil"], groups: ["case"] }, ["body", "tray", "oil"]],
    [{}, []],
  ])("needs by %j the parts %j", (needs, ids) => {
    expect(neededBy(level(needs), reference.parts).map(({ id }) => id)).toEqual(ids);
  });

  const of = (...rows: Partial<Sighting>[]) =>
    assessLevelRarity(
      level({ standing: ["core", "issued"] }),
      reference,
      logged(...rows),
      survivors,
      watched,
      0.95,
    );

  it("is reached or missed by an example of which every part is recorded that it needs, and by no other", () => {
    expect(of(whole).share.inputs).toEqual({ reaching: 1, recorded: 1 });
    expect(of(bare).share.inputs).toEqual({ reaching: 0, recorded: 1 });
    for (const partly of [
      { absent: ["tray"] },
      { absent: ["body"] },
      { present: ["body"] },
      { present: ["tray"] },
    ])
      expect(of(partly).share.inputs).toEqual({ reaching: 0, recorded: 0, leftOut: 1 });
  });

  // Each of two parts is there in three outfits of four and is recorded in one of two, whatever is there: of the 64 equal
  // cases 16 have both recorded, and 9 of these have both. Those known to lack one, counted in, would make it 9 of 37.
  it("has the share of those recorded in full, which how much was recorded of the others does not lower", () => {
    const rows: Partial<Sighting>[] = [];
    for (let outfit = 0; outfit < 16; outfit++)
      for (const recorded of [["body", "tray"], ["body"], ["tray"], []]) {
        const isThere = (part: string) => (part === "body" ? outfit % 4 : Math.floor(outfit / 4)) > 0;
        rows.push({ present: recorded.filter(isThere), absent: recorded.filter((part) => !isThere(part)) });
      }
    const { share, survivors: left } = of(...rows);
    expect(share.value).toBe(9 / 16);
    expect(share.inputs).toEqual({ reaching: 9, recorded: 16, leftOut: 48 });
    for (const { caveats } of [share, left])
      expect(caveats).toContainEqual(statement("left-out-of-level", { examples: 48 }));
  });

  it("does not count as survivors those that are gone", () => {
    const few = { ...survivors, low: 1 };
    const knownOf = (isDestroyed: boolean) =>
      assessLevelRarity(
        level({ standing: ["core", "issued"] }),
        reference,
        logged(whole, whole).map((example) => ({ ...example, isDestroyed })),
        few,
        watched,
        0.95,
      ).survivors.caveats;
    expect(knownOf(false)[0]).toEqual(statement("at-least-known", { known: 2 }));
    expect(knownOf(true).map((each) => each.says)).not.toContain("at-least-known");
  });

  it("is known of those alone that can be told apart, and of one where none can", () => {
    const few = { ...survivors, low: 0.4 };
    const found = (...examples: ReturnType<typeof logged>[]) =>
      assessLevelRarity(
        level({ standing: ["core", "issued"] }),
        reference,
        examples.flat(),
        few,
        watched,
        0.95,
      );
    const { share, survivors: left } = found(logged(whole, whole), nameless(whole, bare));
    expect(share.inputs).toEqual({ reaching: 3, recorded: 4, nameless: 2 });
    expect(says(share)).toEqual(["nameless-rows", "assumes-even-chance"]);
    expect(left.caveats[0]).toEqual(statement("at-least-known", { known: 2 }));
    expect(found(nameless(whole, whole)).survivors.caveats[0]).toEqual(
      statement("at-least-known", { known: 1 }),
    );
  });

  it("is not offered at a rate, nor waited for, where no offer tells whether it reached it", () => {
    const { appearance, wait } = of(offered(unknown, "2002"), offered({ present: ["body"] }, "2003"));
    for (const found of [appearance, wait])
      expect(found).toMatchObject({
        value: null,
        inputs: { offers: 0, offersOfAny: 2, offersRecorded: 0 },
        insufficient: statement("no-offer-decided", { offers: 2 }),
      });
  });

  it("says of how many offers it is not known whether they reached it", () => {
    const { appearance, wait } = of(
      offered(whole, "2002"),
      offered({ absent: ["tray"] }, "2003"),
      offered(unknown, "2004"),
      offered(unknown, "2005"),
      offered(unknown, "1999"),
    );
    for (const found of [appearance, wait]) {
      expect(found.inputs).toMatchObject({ offers: 1, offersOfAny: 4, offersRecorded: 2 });
      expect(found.caveats[0]).toEqual(statement("many-offers-undecided", { all: 4, undecided: 2 }));
    }
    const { appearance: none, wait: never } = of(offered(bare, "2002"));
    expect(none).toMatchObject({ value: 0, low: 0 });
    // By hand, Jeffreys' prior: 10(2^(1/0.5) − 1).
    expect(never.value).toBeCloseTo(30, 12);
    for (const found of [none, never])
      expect(found.caveats[0]).toEqual(statement("no-offer-seen", { years: 10 }));
  });

  it("is waited for by the years alone, and says that some offers are undecided, where none is known to reach it", () => {
    const { wait } = of(offered(bare, "2002"), offered(unknown, "2004"));
    expect(wait.value).toBeCloseTo(30, 12);
    expect(says(wait)?.slice(0, 2)).toEqual(["no-offer-seen", "many-offers-undecided"]);
  });

  it("does not need of an example what it was never issued, nor decides by what is unsure", () => {
    type Share = "not-issued" | { low: number; high: number };
    const reaching = (body: Share, tray: Share = { low: 1, high: 1 }) =>
      assessLevelRarity(
        level({ standing: ["core", "issued"] }),
        reference,
        logged(whole).map((example) => ({
          ...example,
          shares: new Map(example.shares).set("body", body).set("tray", tray),
        })),
        survivors,
        watched,
        0.95,
      ).share.inputs;
    expect(reaching("not-issued")).toEqual({ reaching: 1, recorded: 1 });
    // As of an item: of what it needs nothing was issued, so that nothing can be whole.
    expect(reaching("not-issued", "not-issued")).toEqual({ reaching: 0, recorded: 1 });
    expect(reaching({ low: 0.5, high: 1 })).toEqual({ reaching: 0, recorded: 0, leftOut: 1 });
    expect(reaching({ low: 0.5, high: 0.5 })).toEqual({ reaching: 0, recorded: 1 });
  });

  it("has its own share, survivors, offers and wait", () => {
    const found = of(
      offered(whole, "2002"),
      offered(bare, "2003"),
      offered(whole, "1999"),
      { ...whole, seen: date("2004") },
      unknown,
    );
    expect(found.share).toMatchObject({
      value: 3 / 4,
      unit: "share",
      confidence: 0.95,
      method: "wilson",
      inputs: { reaching: 3, recorded: 4, leftOut: 1 },
      sources: ["bare", "whole"],
      caveats: [statement("left-out-of-level", { examples: 1 }), statement("assumes-even-chance")],
    });
    expect(found.survivors.value).toBe(15);
    expect(found.appearance).toMatchObject({ value: 0.1, inputs: { offers: 1, years: 10 } });
    expect(found.wait).toMatchObject({ unit: "years", inputs: { offers: 1, years: 10 } });
  });

  it("has no share where nothing decides", () => {
    const { share, survivors: left } = of(unknown);
    expect(share).toMatchObject({ value: null, insufficient: statement("no-example-recorded") });
    expect(left).toMatchObject({ value: null, insufficient: statement("no-example-recorded") });
  });
});

describe("survivors as complete", () => {
  const share = figure({ value: 0.5, low: 0.25, high: 0.75 }, { ...basis, unit: "share", sources: ["rows"] });

  it("are the share of the survivors, end by end", () => {
    expect(survivorsAsComplete(share, survivors, 2)).toEqual({
      value: 10,
      low: 2.5,
      high: 30,
      unit: "examples",
      confidence: 0.9,
      method: "share-of-survivors",
      inputs: {
        share: { value: 0.5, low: 0.25, high: 0.75 },
        survivors: { value: 20, low: 10, high: 40 },
      },
      sources: ["log", "rows"],
      caveats: [
        statement("joint-confidence", { confidence: 0.9 }),
        statement("assumes-share-independent"),
        statement("lower-bound-only"),
      ],
      insufficient: null,
    });
  });

  it("are said to be at least those on record where the low end is below", () => {
    expect(survivorsAsComplete(share, survivors, 4).caveats[0]).toEqual(
      statement("at-least-known", { known: 4 }),
    );
    expect(says(survivorsAsComplete(share, survivors, 4))).toEqual([
      "at-least-known",
      "joint-confidence",
      "assumes-share-independent",
      "lower-bound-only",
    ]);
    const even = { ...share, low: 0.3 };
    expect(says(survivorsAsComplete(even, survivors, 3))).not.toContain("at-least-known");
    // By hand: 10 · 0.25 = 2.5, which a page writes as 3 (half away from zero), the three that are known.
    expect(says(survivorsAsComplete(share, survivors, 3))).not.toContain("at-least-known");
  });

  it("are withheld with either", () => {
    const why = (of: Figure, left: Figure) => {
      const found = survivorsAsComplete(of, left, 0);
      expect([found.value, found.low, found.high]).toEqual([null, null, null]);
      return found.insufficient?.says;
    };
    const noShare = withheld(statement("no-example-recorded"), basis);
    expect(why(share, noSurvivors)).toBe("survivors-withheld");
    expect(why(noShare, survivors)).toBe("no-example-recorded");
    expect(why(noShare, noSurvivors)).toBe("survivors-withheld");
    expect(why(pointFigure(0.5, basis), survivors)).toBe("survivors-withheld");
    for (const end of ["value", "low", "high"])
      expect(why({ ...share, [end]: null }, survivors)).toBe("survivors-withheld");
  });
});

describe("as complete as this one", () => {
  const assess = (
    certain: Parameters<typeof assessItemRarity>[0]["certain"],
    rows: Partial<Sighting>[],
    more: { keys?: string[]; survivors?: Figure; items?: string } = {},
  ) =>
    assessItemRarity(
      { id: "one", keys: more.keys ?? [], certain, isAssembled: false, isDestroyed: false },
      rankExamples(logged(...rows), watched),
      more.survivors ?? survivors,
      0.95,
    );

  it("ranks it among those recorded in full, itself counted in", () => {
    const rows = [whole, bare, box, unknown];
    const { rank, asComplete } = assess(0.75, rows);
    expect(rank).toEqual({ place: 2, of: 4, sharing: 2 });
    expect(asComplete).toMatchObject({
      value: 3 / 4,
      unit: "share",
      confidence: 0.95,
      method: "wilson",
      inputs: { atLeastAsComplete: 3, compared: 4, certain: 0.75 },
      sources: ["bare", "box", "whole"],
      caveats: [statement("counted-in-by-certain-part"), statement("assumes-even-chance")],
    });
    expect(assess(1, rows).rank).toEqual({ place: 1, of: 4, sharing: 2 });
    expect(assess(0, rows).rank).toEqual({ place: 4, of: 4, sharing: 1 });
  });

  it("has no share, and no survivors, where there is nobody to compare it with", () => {
    const found = assess(0.25, [unknown, offered(unknown, "2002")]);
    const alone = statement("nobody-to-compare");
    expect(found.asComplete).toMatchObject({ value: null, low: null, high: null, insufficient: alone });
    expect(found.asCompleteSurvivors).toMatchObject({ value: null, insufficient: alone });
    // The one offer may have been of any completeness.
    expect(found.asCompleteWait.insufficient).toEqual(statement("no-offer-decided", { offers: 1 }));
  });

  it("counts for certain only those among its equals that can be told apart, itself and others", () => {
    const examples = [...logged(whole, whole), ...nameless(whole, whole, bare)];
    const { asComplete, asCompleteSurvivors } = assessItemRarity(
      { id: "one", keys: [], certain: 1, isAssembled: false, isDestroyed: false },
      rankExamples(examples, watched),
      { ...survivors, low: 1 },
      0.95,
    );
    expect(asComplete.inputs).toEqual({ atLeastAsComplete: 5, compared: 6, certain: 1, nameless: 3 });
    expect(asComplete.caveats[0]).toEqual(statement("nameless-rows", { nameless: 3, rows: 5 }));
    expect(asCompleteSurvivors.caveats[0]).toEqual(statement("at-least-known", { known: 3 }));
  });

  it("does not count among its equals that survive what is gone, itself or another", () => {
    const knownOf = (itself: boolean, another: boolean) =>
      assessItemRarity(
        {
          id: "one",
          keys: [],
          certain: 0.75,

          isAssembled: false,
          isDestroyed: itself,
        },
        rankExamples(
          logged(whole, bare, box).map((each, at) => ({ ...each, isDestroyed: another && at !== 1 })),
          watched,
        ),
        { ...survivors, low: 0 },
        0.95,
      ).asCompleteSurvivors.caveats[0]?.values;
    // Whole, bare and itself; the box alone is less complete.
    expect(knownOf(false, false)).toEqual({ known: 3 });
    expect(knownOf(true, false)).toEqual({ known: 2 });
    expect(knownOf(false, true)).toEqual({ known: 2 });
  });

  it("takes sums that differ by a rounding error for the same", () => {
    for (const certain of [0.75 + 1e-12, 0.75 - 1e-12]) {
      const { rank, asComplete } = assess(certain, [bare]);
      expect(rank).toEqual({ place: 1, of: 2, sharing: 2 });
      expect(asComplete.value).toBe(1);
    }
  });

  it("is never held against itself, by whatever it is known", () => {
    const rows = [whole, { ...whole, serial: "7" }, { ...whole, example: "e" }];
    expect(assess(0.75, rows).rank).toEqual({ place: 4, of: 4, sharing: 1 });
    expect(assess(0.75, rows, { keys: ["serial 7", "example x"] }).rank).toEqual({
      place: 3,
      of: 3,
      sharing: 1,
    });
    const examples = logged(whole, whole).map((each, at) => ({ ...each, items: at === 0 ? ["one"] : [] }));
    const { rank } = assessItemRarity(
      { id: "one", keys: [], certain: 0.75, isAssembled: false, isDestroyed: false },
      rankExamples(examples, watched),
      survivors,
      0.95,
    );
    expect(rank).toEqual({ place: 2, of: 2, sharing: 1 });
  });

  it("has survivors and a wait of its own", () => {
    const { asCompleteSurvivors, asCompleteWait } = assess(0.75, [
      offered(whole, "2002"),
      offered(bare, "2003"),
      offered(box, "2004"),
      offered(whole, "1999"),
      { ...whole, seen: date("2005") },
      offered(unknown, "2006"),
    ]);
    // Five of six, itself counted in, have three quarters or more.
    expect(asCompleteSurvivors.value).toBeCloseTo((20 * 5) / 6, 12);
    // Of 10 at least, Wilson's low end of five of six is under a half: fewer than the five.
    expect(asCompleteSurvivors.caveats[0]).toEqual(statement("at-least-known", { known: 5 }));
    expect(asCompleteWait).toMatchObject({
      inputs: { offers: 2, years: 10, offersOfAny: 4, offersRecorded: 3 },
      caveats: [
        statement("offers-undecided", { all: 4, undecided: 1 }),
        statement("assumes-constant-rate"),
        statement("offers-as-known-now"),
      ],
    });
  });

  it("says how many of its equals were made up with parts of another case, itself among them", () => {
    const assessed = (isAssembled: boolean, keys: string[] = []) =>
      assessItemRarity(
        { id: "one", keys, certain: 0.75, isAssembled, isDestroyed: false },
        rankExamples(
          logged({ ...whole, serial: "7" }, whole, bare, box).map((each, at) => ({
            ...each,
            isAssembled: at !== 1,
          })),
          watched,
        ),
        survivors,
        0.95,
      );
    const counted = (examples: number) => statement("counts-assembled", { examples });
    // The whole one of serial 7 and the bare one; the box alone is less complete.
    expect(assessed(false).asComplete.caveats[0]).toEqual(counted(2));
    expect(assessed(true).asComplete.caveats[0]).toEqual(counted(3));
    expect(assessed(true).asCompleteSurvivors.caveats).toContainEqual(counted(3));
    expect(assessed(true, ["serial 7"]).asComplete.caveats[0]).toEqual(counted(2));
  });

  it("rests on what others than itself are known from, and waits by the offers of its equals", () => {
    const own = { serial: "7" };
    const { asComplete, asCompleteWait } = assess(
      0.75,
      [
        { ...whole, ...own, source: "only of itself" },
        { ...whole, ...own, source: "of itself and another" },
        { ...offered(box, "2003"), source: "of itself and another" },
        { ...offered(whole, "2004"), source: "of an equal" },
        { ...offered(whole, "2005"), source: "of an equal" },
        { ...offered(box, "2006"), source: "of an equal" },
        { ...offered(bare, "1999"), source: "before all" },
      ],
      { keys: ["serial 7"] },
    );
    expect(asComplete.sources).toEqual(["before all", "of an equal", "of itself and another"]);
    expect(asComplete.inputs).toMatchObject({ atLeastAsComplete: 4, compared: 6 });
    expect(asCompleteWait.inputs).toMatchObject({ offers: 2 });
    expect(asCompleteWait.sources).toEqual(["of an equal"]);
  });

  it("is held against other items, and against two examples that are said to be it", () => {
    const items = [["other"], ["one"], ["one"], []];
    const examples = logged(whole, whole, whole, whole).map((each, at) => ({
      ...each,
      items: items[at] ?? [],
    }));
    const { rank } = assessItemRarity(
      { id: "one", keys: [], certain: 0.75, isAssembled: false, isDestroyed: false },
      rankExamples(examples, watched),
      survivors,
      0.95,
    );
    expect(rank).toEqual({ place: 3, of: 3, sharing: 1 });
  });

  // By hand: T = 10 and k = 0, 10(2^2 − 1).
  it("is waited for by the years alone where none of the offers was as complete", () => {
    const { asCompleteWait } = assess(1, [offered(bare, "2002"), offered(box, "2003")]);
    expect(asCompleteWait.value).toBeCloseTo(30, 12);
    expect(asCompleteWait.caveats[0]).toEqual(statement("no-offer-seen", { years: 10 }));
  });

  it("has no equal in an example of which nothing is recorded, however little of it there is itself", () => {
    const { rank, asCompleteWait } = assess(0, [offered(unknown, "2002"), offered(box, "2003")]);
    expect(rank).toEqual({ place: 2, of: 2, sharing: 1 });
    expect(asCompleteWait.inputs).toMatchObject({ offers: 1 });
  });

  it("is nothing where its reference has no part to count by", () => {
    const found = assess("no-part-in-reference", [offered(whole, "2002"), bare]);
    expect(found.rank).toBeNull();
    expect(found.asComplete).toMatchObject({
      value: null,
      inputs: { atLeastAsComplete: 0, compared: 2, certain: null },
      insufficient: statement("no-part-in-reference"),
    });
    expect(found.asCompleteSurvivors.insufficient).toEqual(statement("no-part-in-reference"));
    expect(found.asCompleteWait).toMatchObject({
      value: null,
      low: null,
      inputs: { offers: 0 },
      insufficient: statement("no-part-in-reference"),
    });
    // It is not that none was seen.
    expect(says(found.asCompleteWait)).not.toContain("no-offer-seen");
  });
});
