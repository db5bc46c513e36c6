import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SeparatingVariant, separatingSets } from "../../shared/statistics/separating-sets.ts";

type Values = readonly (readonly string[] | null)[];

/** Variants v0, v1 … from a table with a row a variant and a column a feature f0, f1 … */
function variantsOf(table: readonly Values[], names = "f"): SeparatingVariant[] {
  return table.map((row, index) => ({
    id: `v${index}`,
    values: new Map(row.map((values, column) => [`${names}${column}`, values])),
  }));
}

const featuresOf = (efforts: readonly number[]) =>
  efforts.map((effort, index) => ({ id: `f${index}`, effort }));

/** Rows of single letters, `?` where nobody knows. */
const letters = (...rows: string[]): Values[] =>
  rows.map((row) => [...row].map((letter) => (letter === "?" ? null : [letter])));

/** Every subset of the features tried in turn. */
function bruteForce(efforts: readonly number[], table: readonly Values[]) {
  const apart = (a: number, b: number, feature: number): boolean => {
    const [x, y] = [table[a]?.[feature] ?? [], table[b]?.[feature] ?? []];
    return x.length > 0 && y.length > 0 && x.every((value) => !y.includes(value));
  };
  const pairs: [number, number][] = [];
  for (let a = 0; a < table.length; a++) for (let b = a + 1; b < table.length; b++) pairs.push([a, b]);
  const isSeparable = ([a, b]: [number, number]) => efforts.some((_, feature) => apart(a, b, feature));
  const separable = pairs.filter(isSeparable);
  let best: { effort: number; size: number; sets: string[][] } = {
    effort: Infinity,
    size: Infinity,
    sets: [],
  };
  for (let mask = 0; mask < 2 ** efforts.length; mask++) {
    const chosen = efforts.flatMap((_, feature) => (mask & (2 ** feature) ? [feature] : []));
    if (!separable.every(([a, b]) => chosen.some((feature) => apart(a, b, feature)))) continue;
    const effort = chosen.reduce((sum, feature) => sum + (efforts[feature] as number), 0);
    const names = chosen.map((feature) => `f${feature}`);
    if (effort < best.effort || (effort === best.effort && chosen.length < best.size)) {
      best = { effort, size: chosen.length, sets: [names] };
    } else if (effort === best.effort && chosen.length === best.size) best.sets.push(names);
  }
  return {
    effort: best.effort,
    sets: new Set(best.sets.map((set) => set.join())),
    unseparated: pairs.filter((pair) => !isSeparable(pair)).map(([a, b]) => [`v${a}`, `v${b}`]),
  };
}

const family = fc
  .tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 8 }))
  .chain(([variants, features]) =>
    fc.record({
      efforts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: features, maxLength: features }),
      table: fc.array(
        fc.array(fc.option(fc.uniqueArray(fc.constantFrom("a", "b", "c"), { maxLength: 2 }), { nil: null }), {
          minLength: features,
          maxLength: features,
        }),
        { minLength: variants, maxLength: variants },
      ),
    }),
  );

describe("separatingSets", () => {
  it("finds the eight minima of the published table of five variants and five features", () => {
    // Five binary rows: size 3 = ⌈log2 5⌉, exactly eight minima [R].
    const found = separatingSets(
      [1, 2, 3, 4, 5].map((index) => ({ id: `c${index}`, effort: 1 })),
      ["11001", "01101", "00111", "10011", "00000"].map((row, index) => ({
        id: `v${index}`,
        values: new Map([...row].map((digit, column) => [`c${column + 1}`, [digit]])),
      })),
    );
    expect(found.sets.map((set) => set.join(""))).toEqual([
      "c1c2c3",
      "c1c2c4",
      "c1c2c5",
      "c1c3c4",
      "c1c4c5",
      "c2c3c4",
      "c2c3c5",
      "c3c4c5",
    ]);
    expect(found).toMatchObject({ effort: 3, unseparated: [], proven: true, complete: true });
  });

  it("agrees with trying every subset", () => {
    fc.assert(
      fc.property(family, ({ efforts, table }) => {
        const expected = bruteForce(efforts, table);
        const found = separatingSets(featuresOf(efforts), variantsOf(table));
        expect(found.effort).toBe(expected.effort);
        expect(new Set(found.sets.map((set) => set.join()))).toEqual(expected.sets);
        expect(found.sets).toHaveLength(expected.sets.size);
        // In the order of the features within a set, and of the sets by their first difference.
        const inOrder = found.sets
          .map((set) => set.toSorted())
          .toSorted((a, b) => (a.join() < b.join() ? -1 : 1));
        expect(found.sets).toEqual(inOrder);
        expect(found.unseparated).toEqual(expected.unseparated);
        expect(found).toMatchObject({ proven: true, complete: true });
      }),
      { numRuns: 1500 },
    );
  });

  it("gives its sets in the order of the features, the earliest first", () => {
    // Any two of the three do.
    const found = separatingSets(featuresOf([1, 1, 1]), variantsOf(letters("aaa", "bab", "abb")));
    expect(found.sets).toEqual([
      ["f0", "f1"],
      ["f0", "f2"],
      ["f1", "f2"],
    ]);
    // And f3, which does the same as f0: every set with the one there is with the other, by hand.
    const alike = separatingSets(featuresOf([1, 1, 1, 1]), variantsOf(letters("aaaa", "bbab", "babb")));
    expect(alike.sets).toEqual([
      ["f0", "f1"],
      ["f0", "f2"],
      ["f1", "f2"],
      ["f1", "f3"],
      ["f2", "f3"],
    ]);
  });

  it("is not content with what a greedy choice finds", () => {
    // f0 separates most at first and then needs f1 and f2; f1 with f4, or f2 with f3, do for two, by hand.
    const table = letters("aabab", "caabc", "cccab", "ccaac", "babba");
    const five = featuresOf([1, 1, 1, 1, 1]);
    expect(separatingSets(five, variantsOf(table), { budget: 0 }).sets).toEqual([["f0", "f1", "f2"]]);
    expect(separatingSets(five, variantsOf(table)).sets).toEqual([
      ["f1", "f4"],
      ["f2", "f3"],
    ]);
  });

  it("prefers the least effort, then the fewest features", () => {
    // f0 alone does it for 3; f1 and f2 together do for 2.
    const table = letters("aaa", "bab", "cbb");
    expect(separatingSets(featuresOf([3, 1, 1]), variantsOf(table))).toMatchObject({
      sets: [["f1", "f2"]],
      effort: 2,
    });
    // At the same effort the one feature wins.
    expect(separatingSets(featuresOf([2, 1, 1]), variantsOf(table))).toMatchObject({
      sets: [["f0"]],
      effort: 2,
    });
  });

  it("lets no number of features outweigh one unit of effort", () => {
    // Five that cost nothing tell six variants from one another, and so does one that costs 1.
    const table = letters("abbbb0", "babbb1", "bbabb2", "bbbab3", "bbbba4", "bbbbb5");
    expect(separatingSets(featuresOf([0, 0, 0, 0, 0, 1]), variantsOf(table))).toMatchObject({
      sets: [["f0", "f1", "f2", "f3", "f4"]],
      effort: 0,
    });
  });

  it("does not count on a feature whose values overlap, nor on one that is not known of both", () => {
    const features = featuresOf([1, 1, 1]);
    const variants = variantsOf([
      [["a", "b"], ["x"], null],
      [["b", "c"], [], ["y"]],
    ]);
    expect(separatingSets(features, variants)).toEqual({
      sets: [[]],
      effort: 0,
      unseparated: [["v0", "v1"]],
      proven: true,
      complete: true,
    });
  });

  it("names the pairs that nothing separates, and separates the others", () => {
    const found = separatingSets(featuresOf([1, 2]), variantsOf(letters("aa", "aa", "ba", "b?")));
    expect(found.unseparated).toEqual([
      ["v0", "v1"],
      ["v2", "v3"],
    ]);
    expect(found.sets).toEqual([["f0"]]);
  });

  it.each([
    ["no variant", []],
    ["one variant", letters("ab")],
  ])("needs no feature for %s", (_, table) => {
    expect(separatingSets(featuresOf([1, 1]), variantsOf(table))).toEqual({
      sets: [[]],
      effort: 0,
      unseparated: [],
      proven: true,
      complete: true,
    });
  });

  it("takes ids and values that Object has of its own, and features that a variant does not mention", () => {
    const found = separatingSets(
      [
        { id: "constructor", effort: 1 },
        { id: "__proto__", effort: 1 },
      ],
      [
        { id: "toString", values: new Map([["constructor", ["valueOf"]]]) },
        { id: "hasOwnProperty", values: new Map([["constructor", ["__proto__"]]]) },
      ],
    );
    expect(found.sets).toEqual([["constructor"]]);
  });

  it("gives features that do the same a set each, up to the limit", () => {
    const row = (letter: string) => letter.repeat(6);
    const six = [1, 1, 1, 1, 1, 1];
    const all = separatingSets(featuresOf(six), variantsOf(letters(row("a"), row("b"))));
    expect(all.sets).toEqual([["f0"], ["f1"], ["f2"], ["f3"], ["f4"], ["f5"]]);
    expect(all.complete).toBe(true);
    const exactly = separatingSets(featuresOf(six), variantsOf(letters(row("a"), row("b"))), { limit: 6 });
    expect(exactly.complete).toBe(true);
    const some = separatingSets(featuresOf(six), variantsOf(letters(row("a"), row("b"))), { limit: 5 });
    expect(some.sets).toHaveLength(5);
    expect(some).toMatchObject({ effort: 1, proven: true, complete: false });
  });

  it("lists a thousand sets where no limit is given", () => {
    const many = Array.from({ length: 1001 }, () => 1);
    const found = separatingSets(featuresOf(many), variantsOf(letters("a".repeat(1001), "b".repeat(1001))));
    expect(found.sets).toHaveLength(1000);
    expect(found).toMatchObject({ proven: true, complete: false });
  });

  it("stops listing at the limit where the sets differ, and still proves the effort", () => {
    // Eight binary features over eight variants, of which any three that are independent do.
    const table = Array.from({ length: 8 }, (_, index) =>
      [1, 2, 3, 4, 5, 6, 7].map((mask) => [
        String([...(index & mask).toString(2)].filter((bit) => bit === "1").length % 2),
      ]),
    );
    const features = featuresOf([1, 1, 1, 1, 1, 1, 1]);
    // The bases of the plane of seven points: 7·6·4/3! = 28.
    expect(separatingSets(features, variantsOf(table)).sets).toHaveLength(28);
    expect(separatingSets(features, variantsOf(table), { limit: 28 }).complete).toBe(true);
    const some = separatingSets(features, variantsOf(table), { limit: 27 });
    expect(some.sets).toHaveLength(27);
    expect(some).toMatchObject({ effort: 3, proven: true, complete: false });
  });

  it("says so where the search is cut short, and still separates", () => {
    const random = randomNumbers(7);
    const table = Array.from({ length: 12 }, () =>
      Array.from({ length: 15 }, () => [random() < 0.5 ? "a" : "b"]),
    );
    const features = featuresOf(Array.from({ length: 15 }, () => 1 + Math.floor(random() * 3)));
    const whole = separatingSets(features, variantsOf(table));
    expect(whole.proven).toBe(true);
    for (const budget of [0, 1, 5]) {
      const cut = separatingSets(features, variantsOf(table), { budget });
      expect(cut).toMatchObject({ proven: false, complete: false });
      expect(cut.sets).toHaveLength(1);
      expect(cut.effort).toBeGreaterThanOrEqual(whole.effort);
      const [set = []] = cut.sets;
      const kept = features.filter(({ id }) => set.includes(id));
      expect(separatingSets(kept, variantsOf(table)).unseparated).toEqual(whole.unseparated);
      expect(set).toEqual(kept.map(({ id }) => id));
    }
  });

  it.each([-1, 1.5, Number.NaN, Infinity])("refuses an effort of %d", (effort) => {
    expect(() => separatingSets([{ id: "arc", effort }], [])).toThrow(
      new RangeError(`Found effort = ${effort} for arc; expected a whole number of at least 0.`),
    );
  });

  it("proves 30 variants by 60 features whose values change along the series, and random ones", () => {
    for (const seed of [1, 2, 3]) {
      const random = randomNumbers(seed);
      const changes = Array.from({ length: 60 }, () => [
        1 + Math.floor(random() * 29),
        1 + Math.floor(random() * 29),
      ]);
      const table = Array.from({ length: 30 }, (_, variant) =>
        changes.map((places) => {
          const value = places.filter((place) => place <= variant).length;
          if (random() < 0.1) return null;
          return random() < 0.1 ? [String(value), String(value + 1)] : [String(value)];
        }),
      );
      const found = separatingSets(
        featuresOf(changes.map(() => 1 + Math.floor(random() * 3))),
        variantsOf(table),
      );
      expect(found.proven).toBe(true);
    }
    const random = randomNumbers(9);
    const table = Array.from({ length: 30 }, () =>
      Array.from({ length: 60 }, () => [random() < 0.5 ? "a" : "b"]),
    );
    const found = separatingSets(
      featuresOf(Array.from({ length: 60 }, () => 1 + Math.floor(random() * 3))),
      variantsOf(table),
    );
    expect(found.proven).toBe(true);
    // ⌈log2 30⌉ = 5 binary features are the least there could be.
    expect(found.sets[0]?.length).toBeGreaterThanOrEqual(5);
  });
});

/** Numerical Recipes' quick generator: the same numbers in every run. */
function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
