import { describe, expect, it } from "vitest";
import { type Figure, figure, pointFigure, withheld } from "../../../shared/assessments/figure.ts";
import { type Example, examplesOf } from "../../../shared/assessments/rarity/examples.ts";
import {
  assessCoverage,
  assessSurvivalRate,
  assessSurvivors,
  assessSurvivorsFromTwoLists,
  frequenciesOf,
  namingConflict,
} from "../../../shared/assessments/rarity/survivors.ts";
import { statement } from "../../../shared/assessments/statement.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import { sighting, variant } from "../properties/given.ts";

const logged = (...rows: Partial<Sighting>[]): readonly Example[] =>
  examplesOf(variant("a"), rows.map(sighting), []);
/** So many examples, each seen so many times. */
const seen = (count: number, times: number, source = "log"): Partial<Sighting>[] =>
  Array.from({ length: count * times }, (_, at) => ({ example: `${times} ${at % count}`, source }));
const said = ({ caveats }: Figure) => caveats.map(({ says }) => says);

describe("how often examples were seen", () => {
  it("is counted by sightings, examples, and those seen once and twice", () => {
    expect(frequenciesOf(logged(...seen(3, 1), ...seen(2, 2), ...seen(1, 3)))).toEqual({
      sightings: 10,
      distinct: 6,
      once: 3,
      twice: 2,
    });
    expect(frequenciesOf([])).toEqual({ sightings: 0, distinct: 0, once: 0, twice: 0 });
  });
});

describe("coverage", () => {
  // Chao & Jost (2012), Ecology 93: 2533-2547, by hand: f1 = 3, f2 = 2, n = 7: 1 − (3/7)·(6·3)/(6·3 + 4).
  it("is a share without an interval, with what it rests on", () => {
    const found = assessCoverage(logged(...seen(3, 1, "z"), ...seen(2, 2, "a")), 0.9);
    expect(found.value).toBeCloseTo(1 - (3 / 7) * (18 / 22), 12);
    expect(found).toMatchObject({
      low: null,
      high: null,
      unit: "share",
      confidence: 0.9,
      method: "coverage",
      inputs: { sightings: 7, once: 3, twice: 2 },
      sources: ["a", "z"],
      caveats: [{ says: "assumes-independent-sightings" }],
      insufficient: null,
    });
  });

  it("is said to rest on nothing where no example was seen again", () => {
    expect(said(assessCoverage(logged(...seen(3, 1)), 0.95))).toEqual([
      "coverage-of-none-again",
      "assumes-independent-sightings",
    ]);
  });

  it("is withheld of one sighting, and of one example seen twice is not", () => {
    const one = assessCoverage(logged(...seen(1, 1)), 0.95);
    expect(one).toMatchObject({ value: null, insufficient: statement("one-sighting") });
    expect(said(one)).toEqual(["assumes-independent-sightings"]);
    expect(assessCoverage(logged(...seen(1, 2)), 0.95).value).toBe(1);
  });

  it("is withheld without a sighting", () => {
    const none = assessCoverage([], 0.95);
    expect(none).toMatchObject({ value: null, insufficient: statement("no-sighting") });
    // There is no number that would say next to nothing.
    expect(said(none)).toEqual(["assumes-independent-sightings"]);
  });
});

describe("survivors", () => {
  // Chao (1984), bias-corrected, by hand: 5 + 3·2/(2·3) = 6.
  it("are estimated from those seen once and twice", () => {
    const found = assessSurvivors(logged(...seen(3, 1), ...seen(2, 2)), 0.95);
    expect(found).toMatchObject({
      value: 6,
      unit: "examples",
      confidence: 0.95,
      method: "chao1",
      inputs: { distinct: 5, once: 3, twice: 2, sightings: 7 },
      sources: ["log"],
      insufficient: null,
    });
    expect(said(found)).toEqual(["lower-bound-only", "assumes-independent-sightings"]);
  });

  const destroying = (examples: readonly Example[], count: number) =>
    examples.map((example, at) => ({ ...example, isDestroyed: at < count }));

  // By hand: 5 + 3·2/(2·3) = 6 that were there to be seen, of which two are no longer; every end is less by as many.
  it("are less those that no longer exist, whose sightings still tell of the others", () => {
    const examples = logged(...seen(3, 1), ...seen(2, 2));
    const all = assessSurvivors(examples, 0.95);
    const left = assessSurvivors(destroying(examples, 2), 0.95);
    expect(left.inputs).toEqual({ ...all.inputs, destroyed: 2 });
    expect(left.value).toBeCloseTo(4, 12);
    expect(left.low).toBeCloseTo((all.low ?? 0) - 2, 12);
    expect(left.high).toBeCloseTo((all.high ?? 0) - 2, 12);
    expect(left.caveats[0]).toEqual(statement("less-destroyed", { examples: 2 }));
  });

  // By hand: the one known example, seen three times; D = 1, T = 0, and it is gone.
  it("are none where all that were ever seen are gone", () => {
    const { value, low } = assessSurvivors(destroying(logged(...seen(1, 3)), 1), 0.95);
    expect([value, low]).toEqual([0, 0]);
  });

  it("are withheld without a sighting, and where each example was seen once", () => {
    expect(assessSurvivors([], 0.95).insufficient).toEqual(statement("no-sighting"));
    expect(assessSurvivors(logged(...seen(4, 1)), 0.95).insufficient).toEqual(
      statement("every-example-seen-once", { known: 4 }),
    );
  });
});

describe("survivors from two lists", () => {
  const rows = (list: string, names: string, source = list) =>
    [...names].map((example) => ({ example, list, source }));

  // Chapman (1951), by hand: 3 on one list, 4 on the other, 1 on both: (4·5)/2 − 1 = 9.
  it("are estimated from what both name", () => {
    const found = assessSurvivorsFromTwoLists(
      logged(
        ...rows("south", "abc"),
        ...rows("north", "cdef"),
        { example: "g", source: "unlisted" },
        { example: "h", source: "unlisted" },
        {
          example: "a",
          source: "unlisted",
        },
      ),
      0.95,
    );
    expect(found).toMatchObject({
      value: 9,
      unit: "examples",
      confidence: 0.95,
      method: "chapman",
      inputs: { lists: ["north", "south"], firstList: 4, secondList: 3, both: 1 },
      sources: ["north", "south"],
      insufficient: null,
    });
    // By hand: 6 named, 3 more; var = 5*4*3*2 / (4*3) = 10; 6 + 3 / exp(1.96 * sqrt(ln(1 + 10/9))) = 6.55. A page has that
    // as 7, and two more are known from elsewhere.
    expect(found.caveats[0]).toEqual({ says: "at-least-known", values: { known: 8 } });
    expect(said(found)).toEqual(["at-least-known", "assumes-independent-lists"]);
  });

  // By hand: one on each list, the same one: (2·2)/2 − 1 = 1, from 1 to 1, and five are known.
  it("are withheld where they would all lie below what is known", () => {
    const both = [...rows("north", "a"), ...rows("south", "a")];
    const found = assessSurvivorsFromTwoLists(logged(...both, ...seen(4, 1)), 0.95);
    expect(found).toMatchObject({
      value: null,
      low: null,
      high: null,
      insufficient: statement("lists-below-known", { known: 5, high: 1 }),
    });
    expect(assessSurvivorsFromTwoLists(logged(...both), 0.95)).toMatchObject({ value: 1, low: 1, high: 1 });
  });

  // By hand: (3·3)/1 − 1 = 8.
  it("are given, with a warning, where the lists share nothing", () => {
    const found = assessSurvivorsFromTwoLists(logged(...rows("north", "ab"), ...rows("south", "cd")), 0.95);
    expect(found.value).toBe(8);
    expect(said(found)).toEqual(["assumes-independent-lists", "lists-share-nothing"]);
  });

  it.each([
    [[], 0],
    [["north"], 1],
    [["north", "south", "east"], 3],
  ])("are withheld with the lists %j", (lists, count) => {
    const found = assessSurvivorsFromTwoLists(logged({}, ...lists.flatMap((list) => rows(list, "ab"))), 0.95);
    expect(found).toMatchObject({
      value: null,
      inputs: { lists: [...lists].sort() },
      caveats: [],
      insufficient: statement("not-two-lists", { lists: count }),
    });
    expect(found.inputs).not.toHaveProperty("both");
  });
});

const basis = { unit: "examples", confidence: 0.95, method: "chao1", inputs: {} } as const;
const survivors = (value: number, low: number, high: number) =>
  figure({ value, low, high }, { ...basis, sources: ["log"], caveats: [statement("lower-bound-only")] });
const made = (value: number, low = value, high = value) =>
  figure({ value, low, high }, { ...basis, method: "serial-ranges", sources: ["ledger"] });
const madeRange = (low: number, high: number): Figure => ({
  ...withheld(statement("made-only-a-range", { low, high }), { ...basis, method: "documented" }),
  low,
  high,
});
const unknown = withheld(statement("made-unknown"), basis);

describe("more estimated to survive than were made", () => {
  it("is said before all else, with the number made", () => {
    const found = namingConflict(survivors(13, 9, 20), 7, made(10));
    expect(found.caveats).toEqual([
      statement("estimate-exceeds-made", { made: 10 }),
      statement("lower-bound-only"),
    ]);
    expect([found.value, found.low, found.high]).toEqual([13, 9, 20]);
  });

  it("of a range made is said where it is more than the most", () => {
    expect(said(namingConflict(survivors(13, 9, 20), 7, madeRange(8, 12)))).toContain(
      "estimate-exceeds-made",
    );
    expect(namingConflict(survivors(13, 9, 20), 7, madeRange(8, 12)).caveats[0]?.values).toEqual({
      made: 12,
    });
    expect(said(namingConflict(survivors(13, 9, 20), 7, madeRange(8, 13)))).toEqual(["lower-bound-only"]);
  });

  it("is said of those that are known, even where nothing can be estimated", () => {
    const seenOnce = withheld(statement("every-example-seen-once", { known: 11 }), basis);
    expect(namingConflict(seenOnce, 11, made(10)).caveats).toEqual([
      statement("known-exceed-made", { known: 11, made: 10 }),
    ]);
    expect(namingConflict(seenOnce, 10, made(10))).toBe(seenOnce);
    expect(said(namingConflict(survivors(13, 11, 20), 11, made(10)))[0]).toBe("known-exceed-made");
  });

  it.each([
    ["as many as were made", survivors(10, 9, 20), made(10)],
    ["nobody knows how many were made", survivors(13, 9, 20), unknown],
    ["nobody knows how many survive", { ...survivors(13, 9, 20), value: null }, made(10)],
  ])("is not said where it is not so: %s", (_, estimate, number) => {
    expect(namingConflict(estimate, 7, number)).toBe(estimate);
  });
});

describe("the survival rate", () => {
  const rate = (estimate: Figure, number: Figure) => assessSurvivalRate(estimate, number);

  // By hand: 20/100; 10/120; 40/80. Bonferroni: 0.95 + 0.95 - 1.
  it("divides end by end, the least by the most, and is no surer than both are", () => {
    expect(rate(survivors(20, 10, 40), made(100, 80, 120))).toEqual({
      value: 0.2,
      low: 10 / 120,
      high: 0.5,
      unit: "share",
      confidence: 0.9,
      method: "survival-ratio",
      inputs: {
        survivors: { value: 20, low: 10, high: 40 },
        made: { value: 100, low: 80, high: 120 },
      },
      sources: ["ledger", "log"],
      caveats: [statement("joint-confidence", { confidence: 0.9 }), statement("lower-bound-only")],
      insufficient: null,
    });
  });

  it("is as sure as its survivors where the number made is no estimate", () => {
    const documented = { ...made(100), method: "documented" } as const;
    for (const certain of [made(100), documented]) {
      const found = rate(survivors(20, 10, 40), certain);
      expect(found.confidence).toBe(0.95);
      expect(said(found)).not.toContain("joint-confidence");
    }
  });

  it("is never more than all of them", () => {
    expect(rate(survivors(20, 10, 40), made(30))).toMatchObject({ value: 2 / 3, low: 1 / 3, high: 1 });
    expect(rate(survivors(20, 10, 20), made(20))).toMatchObject({ value: 1, low: 0.5, high: 1 });
  });

  it("of a range made is a range, and no number between", () => {
    expect(rate(survivors(20, 10, 40), madeRange(80, 100))).toMatchObject({
      value: null,
      low: 0.1,
      high: 0.5,
      insufficient: statement("made-only-a-range", { low: 80, high: 100 }),
    });
  });

  it("is withheld, with the reason, where either is not known or they contradict each other", () => {
    const none = withheld(statement("no-sighting"), basis);
    expect(rate(none, made(100))).toMatchObject({
      value: null,
      low: null,
      insufficient: statement("survivors-withheld"),
    });
    expect(rate(pointFigure(20, basis), made(100)).insufficient).toEqual(statement("survivors-withheld"));
    for (const end of ["value", "low", "high"])
      expect(rate({ ...survivors(20, 10, 40), [end]: null }, made(100)).insufficient).toEqual(
        statement("survivors-withheld"),
      );
    expect(rate(survivors(20, 10, 40), unknown).insufficient).toEqual(statement("made-withheld"));
    for (const end of ["low", "high"])
      expect(rate(survivors(20, 10, 40), { ...made(100), [end]: null }).insufficient).toEqual(
        statement("made-withheld"),
      );
    expect(rate(survivors(20, 10, 40), made(0)).insufficient).toEqual(statement("made-withheld"));
    for (const known of [7, 16]) {
      expect(rate(namingConflict(survivors(20, 10, 40), known, made(15)), made(15))).toMatchObject({
        value: null,
        low: null,
        high: null,
        caveats: [statement("lower-bound-only")],
        insufficient: statement("survivors-exceed-made"),
      });
    }
  });
});
