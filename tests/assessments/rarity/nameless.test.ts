import { describe, expect, it } from "vitest";
import { examplesOf } from "../../../shared/assessments/rarity/examples.ts";
import { countKnown } from "../../../shared/assessments/rarity/nameless.ts";
import {
  assessCoverage,
  assessSurvivors,
  assessSurvivorsFromTwoLists,
} from "../../../shared/assessments/rarity/survivors.ts";
import { statement } from "../../../shared/assessments/statement.ts";
import { variantPage } from "../../../shared/pages/variant/variant-page.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import { catalogueOf, publishedIn, smallCollection, writeCollection } from "../../collections/collection.ts";
import { sighting, variant } from "../properties/given.ts";

const examples = (...rows: Partial<Sighting>[]) => examplesOf(variant("a"), rows.map(sighting), []);
const named = (count: number, times: number): Partial<Sighting>[] =>
  Array.from({ length: count * times }, (_, at) => ({ example: `${times} ${at % count}` }));
const nameless = (count: number): Partial<Sighting>[] => Array.from({ length: count }, () => ({}));

describe("rows that give neither serial nor name", () => {
  // Chao (1984), bias-corrected, by hand: of 8 examples 6 seen once and 2 twice: 8 + 6·5/(2·3) = 13. Six more, each an
  // example of its own: 14 + 12·11/(2·3) = 36.
  it("raise the number of survivors, which says so before all else where they are many", () => {
    const rows = [...named(6, 1), ...named(2, 2)];
    expect(assessSurvivors(examples(...rows), 0.95).value).toBeCloseTo(13, 12);
    const { value, inputs, caveats } = assessSurvivors(examples(...rows, ...nameless(6)), 0.95);
    expect(value).toBeCloseTo(36, 12);
    expect(inputs).toEqual({ distinct: 14, once: 12, twice: 2, sightings: 16, nameless: 6 });
    expect(caveats[0]).toEqual(statement("many-nameless-rows", { nameless: 6, rows: 16 }));
  });

  it.each([
    [1, 4, "nameless-rows"],
    [1, 3, "many-nameless-rows"],
    [2, 6, "many-nameless-rows"],
  ])("%i beside %i others are told of as %s", (count, others, says) => {
    const found = examples(...nameless(count), ...named(others, 2));
    const told = statement(says as "nameless-rows", { nameless: count, rows: count + 2 * others });
    for (const { caveats } of [assessSurvivors(found, 0.95), assessCoverage(found, 0.95)])
      expect(caveats).toContainEqual(told);
    expect(assessCoverage(found, 0.95).inputs).toMatchObject({ nameless: count });
  });

  it("are told of by an estimate from two lists, as far as they are on them", () => {
    const { inputs, caveats } = assessSurvivorsFromTwoLists(
      examples(
        { example: "x", list: "north" },
        { example: "x", list: "south" },
        { list: "south" },
        {},
        { example: "y" },
      ),
      0.95,
    );
    expect(inputs).toMatchObject({ firstList: 1, secondList: 2, both: 1, nameless: 1 });
    expect(caveats).toContainEqual(statement("nameless-rows", { nameless: 1, rows: 3 }));
  });

  it.each([
    [3, 2, 3],
    [0, 3, 1],
    [1, 3, 1],
    [0, 0, 0],
  ])(
    "are not known for certain to be others: of %i with a name and %i without, %i are known",
    (a, b, known) => {
      const found = examples(...named(a, 1), ...nameless(b));
      expect(countKnown(found)).toBe(known);
      if (found.length > 0)
        expect(assessSurvivors(found, 0.95).insufficient).toEqual(
          statement("every-example-seen-once", { known }),
        );
    },
  );
});

describe("on the page of a variant of which two are said to have been made", () => {
  const pageOf = (rows: readonly string[]) => {
    const files = smallCollection("made: { count: 2, source: book }\nparts: { p: {} }\n", {
      "content/sources.yaml": "- { id: book, title: A book }\n",
      "content/sightings/log.csv": ["seen,variant,serial,source,kind", ...rows, ""].join("\n"),
    });
    const index = catalogueOf(publishedIn(writeCollection(files)));
    const page = variantPage([...index.variants.values()][0] as never, index);
    return {
      counted: page.sightings.counted[0],
      survivors: page.figures.find(({ id }) => id === "survivors")?.figure,
    };
  };
  const three = (serial: (at: number) => string) =>
    [1, 2, 3].map((at) => `200${at},chest-a,${serial(at)},book,offer`);

  it("three rows without a name make no record wrong, and may be of one", () => {
    const { counted, survivors } = pageOf(three(() => ""));
    expect(survivors?.withheld).toMatch(/at least 1 survives\.$/);
    expect(survivors?.doubt).toBe(
      "Of the 3 rows of the log behind it 3 name neither serial nor example: each counts as an example of its own, and may be one that was seen before.",
    );
    expect(counted).toBe(
      "3 sightings of 3 examples, the last in 2003; 3 of them seen once, 0 seen twice. 3 of the sightings name neither serial nor example, and count as examples of their own.",
    );
  });

  it("three with serials do", () => {
    const { counted, survivors } = pageOf(three(String));
    expect(survivors?.withheld).toMatch(/at least 3 survive\.$/);
    expect(survivors?.doubt).toBe(
      "3 different examples are known, and 2 are said to have been made: a record is wrong.",
    );
    expect(counted).toBe(
      "3 sightings of 3 different examples, the last in 2003; 3 of them seen once, 0 seen twice.",
    );
  });
});
