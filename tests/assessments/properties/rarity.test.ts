import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  assessAppearance,
  assessWait,
  isCountedOffer,
  offersIn,
  yearsWatched,
} from "../../../shared/assessments/rarity/appearance.ts";
import { assessItemRarity } from "../../../shared/assessments/rarity/as-complete.ts";
import { type Example, examplesOf } from "../../../shared/assessments/rarity/examples.ts";
import { assessLevelRarity } from "../../../shared/assessments/rarity/level-rarity.ts";
import { assessMade } from "../../../shared/assessments/rarity/made.ts";
import { assessPartRate } from "../../../shared/assessments/rarity/part-rate.ts";
import { rankExamples } from "../../../shared/assessments/rarity/ranked-examples.ts";
import { classOf } from "../../../shared/assessments/rarity/scale-class.ts";
import {
  assessCoverage,
  assessSurvivalRate,
  assessSurvivors,
  assessSurvivorsFromTwoLists,
  frequenciesOf,
} from "../../../shared/assessments/rarity/survivors.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import type { Level } from "../../../shared/records/variant.ts";
import { date, part, range, sighting, variant } from "./given.ts";

const level = (id: string, ...parts: string[]): Level => ({
  id,
  name: id,
  needs: { standing: [], parts, groups: [] },
});
const whole = level("whole", "body", "tray");
const bare = level("bare", "body");
const reference = variant("a", {
  parts: [
    part("body", { standing: "core", weight: 3 }),
    part("tray"),
    part("oil", { standing: "consumable" }),
  ],
  levels: [whole, bare],
});

const states = fc.constantFrom<Pick<Sighting, "present" | "absent">>(
  { present: ["body", "tray"], absent: [] },
  { present: ["body"], absent: ["tray"] },
  { present: ["body"], absent: [] },
  { present: [], absent: ["rest"] },
  { present: [], absent: [] },
);
const row = fc
  .record({
    example: fc.option(fc.constantFrom("e1", "e2", "e3", "e4"), { nil: undefined }),
    serial: fc.option(fc.constantFrom("1", "2", "3", "4"), { nil: undefined }),
    list: fc.option(fc.constantFrom("east", "west"), { nil: undefined }),
    kind: fc.constantFrom<Sighting["kind"]>("offer", "record", "mention"),
    relisted: fc.boolean(),
    year: fc.integer({ min: 1990, max: 2020 }),
    state: states,
  })
  .map(({ year, state, ...more }) => sighting({ ...more, ...state, seen: date(String(year)) }));
const logs = fc.array(row, { maxLength: 14 });

const logged = (log: readonly Sighting[]): readonly Example[] => examplesOf(reference, log, []);

describe("examples", () => {
  it("are the rows tied by a name or serial, directly or by way of others, in any order of the log", () => {
    fc.assert(
      fc.property(logs, (log) => {
        // The closure of "shares a name or a serial", by merging until nothing merges any more.
        // An offer listed again of no example that is named is one of those that were offered.
        const isAgain = (row: Sighting) =>
          row.relisted && row.example === undefined && row.serial === undefined;
        const isOffered = log.some((row) => row.kind === "offer" && !isAgain(row));
        let groups: Sighting[][] = log.filter((row) => !(isOffered && isAgain(row))).map((each) => [each]);
        const tied = (a: Sighting, b: Sighting) =>
          (a.example !== undefined && a.example === b.example) ||
          (a.serial !== undefined && a.serial === b.serial);
        for (let merged = true; merged; ) {
          merged = false;
          for (const one of groups) {
            const other = groups.find(
              (each) => each !== one && each.some((x) => one.some((y) => tied(x, y))),
            );
            if (!other) continue;
            groups = [...groups.filter((each) => each !== one && each !== other), [...one, ...other]];
            merged = true;
            break;
          }
        }
        const sizes = (of: readonly (readonly Sighting[])[]) => of.map(({ length }) => length).sort();
        const found = logged(log);
        expect(sizes(found.map(({ rows }) => rows))).toEqual(sizes(groups));
        expect(frequenciesOf(logged(log.toReversed()))).toEqual(frequenciesOf(found));
      }),
    );
  });
});

describe("survivors and coverage", () => {
  it("lie between what is known and what their intervals allow, and nothing is estimated of what was never seen again", () => {
    fc.assert(
      fc.property(logs, (log) => {
        const examples = logged(log);
        const { sightings, distinct, once } = frequenciesOf(examples);
        const survivors = assessSurvivors(examples, 0.95);
        const coverage = assessCoverage(examples, 0.95);
        expect(survivors.value === null).toBe(sightings === once);
        expect(coverage.value === null).toBe(sightings < 2);
        if (survivors.value === null || survivors.low === null || survivors.high === null) return;
        expect(survivors.low).toBeGreaterThanOrEqual(distinct);
        expect(survivors.value).toBeGreaterThanOrEqual(survivors.low);
        expect(survivors.high).toBeGreaterThanOrEqual(survivors.value);
        expect(coverage.value).toBeGreaterThanOrEqual(0);
        expect(coverage.value).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("from two lists are at least as many as both lists name, whichever list is called the first", () => {
    fc.assert(
      fc.property(logs, (log) => {
        const found = assessSurvivorsFromTwoLists(logged(log), 0.95);
        const turned = log.map((each) => ({
          ...each,
          list: each.list === "east" ? "west" : each.list === "west" ? "east" : undefined,
        }));
        const { value, low, high } = assessSurvivorsFromTwoLists(logged(turned), 0.95);
        expect(value === null).toBe(found.value === null);
        if (found.value === null) return;
        for (const [one, other] of [
          [value, found.value],
          [low, found.low],
          [high, found.high],
        ] as const)
          expect(one).toBeCloseTo(other ?? Number.NaN, 9);
        expect(found.value).toBeGreaterThanOrEqual(
          logged(log).filter(({ lists }) => lists.size > 0).length - 1e-9,
        );
      }),
    );
  });

  it("are a share of those made that never passes 1, or no share at all", () => {
    fc.assert(
      fc.property(logs, fc.integer({ min: 1, max: 30 }), (log, count) => {
        const made = assessMade(
          variant("a", { made: { low: count, high: count, source: "s", page: undefined, note: undefined } }),
          { shown: [], withheld: [], misread: 0 },
          0.95,
        );
        const survivors = assessSurvivors(logged(log), 0.95);
        const rate = assessSurvivalRate(survivors, made);
        expect(rate.value === null).toBe(survivors.value === null || survivors.value > count);
        if (rate.value !== null) expect(rate.high).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe("made", () => {
  it("falls, and grows surer, as further serials below the largest are seen", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 80 }), { minLength: 2, maxLength: 10 }),
        (numbers) => {
          const open = variant("a", { serials: [range({ prefix: "N", from: 1 })] });
          const [largest = 0, ...others] = [...numbers].sort((a, b) => b - a);
          const seen = (few: readonly number[]) =>
            assessMade(
              open,
              { shown: few.map((each) => ({ serial: `N${each}`, sources: [] })), withheld: [], misread: 0 },
              0.95,
            );
          const some = seen([largest, ...others.slice(0, 1)]);
          const all = seen([largest, ...others, ...others]);
          expect(all.low).toBe(largest);
          expect(all.value).toBeLessThanOrEqual(some.value ?? 0);
          expect(all.high).toBeLessThanOrEqual(some.high ?? 0);
        },
      ),
    );
  });

  it("of closed ranges is their length, whatever was seen", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(50), { minLength: 1, maxLength: 4 }), (lengths) => {
        const serials = lengths.map((length, at) =>
          range({ prefix: "ABCD"[at] as string, from: 100 * at, to: 100 * at + length }),
        );
        const sum = lengths.reduce((total, length) => total + length + 1, 0);
        expect(
          assessMade(
            variant("a", { serials }),
            { shown: [{ serial: "A1", sources: [] }], withheld: [], misread: 0 },
            0.95,
          ),
        ).toMatchObject({
          value: sum,
          low: sum,
          high: sum,
        });
      }),
    );
  });
});

describe("part by part, and level by level", () => {
  it("counts the examples that have it of those that tell of it", () => {
    fc.assert(
      fc.property(logs, (log) => {
        const examples = logged(log);
        const told = examples.flatMap(({ shares }) => shares.get("tray") ?? []);
        const { inputs } = assessPartRate(part("tray"), examples, 0.95);
        expect(inputs).toMatchObject({
          having: told.filter((share) => share !== "not-issued" && share.low === 1).length,
          recorded: told.length,
        });
      }),
    );
  });

  // Common practice, no source: the bare instrument turns up often, the whole outfit hardly ever.
  it("a level that needs more is reached by no more of the examples, and offered no more often", () => {
    const watched = { first: 1990, last: 2020, declared: true };
    fc.assert(
      fc.property(logs, (log) => {
        const examples = logged(log);
        const survivors = assessSurvivors(examples, 0.95);
        const [most, least] = [whole, bare].map((each) =>
          assessLevelRarity(each, reference, examples, survivors, watched, 0.95),
        );
        const reaching = (of: typeof most) => Number(of?.share.inputs.reaching);
        expect(reaching(most)).toBeLessThanOrEqual(reaching(least));
        expect(most?.appearance.value ?? 0).toBeLessThanOrEqual(least?.appearance.value ?? 0);
      }),
    );
  });
});

describe("a level of completeness", () => {
  const watched = { first: 1990, last: 2020, declared: true };
  const assess = (examples: readonly Example[]) =>
    assessLevelRarity(whole, reference, examples, assessSurvivors(examples, 0.95), watched, 0.95);

  it("has a share that no further example moves of which a needed part is not recorded", () => {
    const partly = fc.constantFrom<Pick<Sighting, "present" | "absent">>(
      { present: [], absent: ["tray"] },
      { present: ["body"], absent: [] },
      { present: [], absent: [] },
    );
    fc.assert(
      fc.property(logs, fc.array(partly, { maxLength: 5 }), (log, further) => {
        const { share } = assess(logged(log));
        const more = assess(logged([...log, ...further.map((each) => sighting(each))])).share;
        expect([more.value, more.low, more.high]).toEqual([share.value, share.low, share.high]);
        expect(Number(more.inputs.leftOut ?? 0)).toBe(Number(share.inputs.leftOut ?? 0) + further.length);
      }),
    );
  });

  it("is waited for as long as any where every outfit offered reaches it, and no longer without saying why", () => {
    fc.assert(
      fc.property(logs, (log) => {
        const examples = logged(log);
        const { wait, appearance } = assess(examples);
        const any = offersIn(log.filter((each) => isCountedOffer(each, watched)));
        const reaching = Number(appearance.inputs.offers);
        const decided = Number(appearance.inputs.offersRecorded ?? any.count);
        expect(reaching).toBeLessThanOrEqual(decided);
        const isDecided = any.count === 0 || decided > 0;
        expect(wait.insufficient?.says).toBe(isDecided ? undefined : "no-offer-decided");
        expect(wait.caveats.some(({ says }) => says === "no-offer-seen")).toBe(isDecided && reaching === 0);
        const undecided = any.count - decided;
        const told = wait.caveats.find(({ values }) => values.undecided === undecided)?.says;
        const asMany = undecided >= decided ? "many-offers-undecided" : "offers-undecided";
        expect(told).toBe(decided > 0 && undecided > 0 ? asMany : undefined);
        if (reaching === any.count) expect(wait.value).toBe(assessWait(any, watched, 0.95).value);
      }),
    );
  });
});

describe("as complete as this one", () => {
  it("ranks it among those recorded in full, and the more complete it is the fewer are its equals", () => {
    const shares = fc.constantFrom(0, 0.25, 0.75, 1);
    fc.assert(
      fc.property(logs, shares, shares, (log, a, b) => {
        const examples = logged(log);
        const assess = (certain: number) =>
          assessItemRarity(
            { id: "one", keys: [], certain, isAssembled: false, isDestroyed: false },
            rankExamples(examples, null),
            assessSurvivors(examples, 0.95),
            0.95,
          );
        const full = examples.filter(({ recordedCompleteness }) => recordedCompleteness !== null).length + 1;
        const [lower, higher] = [assess(Math.min(a, b)), assess(Math.max(a, b))];
        for (const { rank, asComplete } of [lower, higher]) {
          expect(rank?.of).toBe(full);
          // With nobody to compare there is no share, but that it is the only one.
          expect(asComplete.value === null).toBe(full === 1);
          expect(rank?.place).toBeGreaterThanOrEqual(1);
          expect(rank?.place).toBeLessThanOrEqual(full);
          if (full > 1) expect(asComplete.value).toBeGreaterThan(0);
        }
        expect(higher.rank?.place).toBeLessThanOrEqual(lower.rank?.place ?? 0);
        expect(higher.asComplete.value ?? 0).toBeLessThanOrEqual(lower.asComplete.value ?? 0);
      }),
    );
  });
});

describe("appearance", () => {
  it("counts each new offer within the years watched, and no other row", () => {
    fc.assert(
      fc.property(logs, fc.integer({ min: 1985, max: 2025 }), fc.nat(20), (log, first, length) => {
        const watched = yearsWatched(date(`${first}/${first + length}`), log);
        const offers = log.filter((each) => isCountedOffer(each, watched));
        const figure = assessAppearance(offersIn(offers), watched, 0.95);
        const counted = log.filter(({ kind, relisted, seen: { text } }) => {
          return kind === "offer" && !relisted && Number(text) >= first && Number(text) <= first + length;
        });
        expect(figure.value).toBeCloseTo(counted.length / (length + 1), 12);
        expect(figure.high).toBeGreaterThan(figure.value ?? 0);
      }),
    );
  });
});

describe("the class on a scale", () => {
  it("never falls as the number grows, and has every whole number of the scale", () => {
    const scale = {
      classes: [1, 2, 4, 8, 16].map((low) => ({ id: String(low), low, high: 2 * low - 1 })),
    } as unknown as Parameters<typeof classOf>[0];
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 31.49, noNaN: true }), (count) => {
        expect(Number(classOf(scale, count))).toBe(2 ** Math.floor(Math.log2(Math.round(count))));
      }),
    );
    expect(classOf(scale, 31.5)).toBeNull();
    expect(classOf(scale, 0.49)).toBeNull();
  });
});
