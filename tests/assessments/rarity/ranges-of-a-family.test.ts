import { describe, expect, it } from "vitest";
import { checkCollection } from "../../../shared/site/checks/check-collection.ts";
import {
  type Files,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../../collections/collection.ts";

const variantWith = (serials: string) => `parts: { p: {} }\nserials: [${serials}]\n`;
const open = "{ prefix: N, from: 101 }";

/** A variant of which the numbers have been seen, and another of the same family. */
const beside = (own: string, other: string, seen: readonly number[], more: Files = {}): string =>
  writeCollection(
    smallCollection(variantWith(own), {
      "schemas/reference/chest/chest-b.yaml": `name: Chest B\n${variantWith(other)}`,
      "content/sightings/log.csv": [
        "seen,variant,serial,kind",
        ...seen.map((number) => `2001,chest-a,N${number},record`),
        "",
      ].join("\n"),
      ...more,
    }),
  );

const madeOf = (root: string) => {
  const variant = publishedIn(root).variants.find(({ id }) => id === "chest-a");
  if (!variant) throw new Error("The variant is not there.");
  const { value, low, high, inputs } = variant.rarity.made;
  const { ranges } = inputs as { readonly ranges: readonly unknown[] };
  return { ends: [value, low, high], range: ranges[0] };
};
const toldOf = (root: string) => checkCollection(root).diagnostics.map(({ code }) => code);

// The textbook sample 2, 6, 7, 14 again, counted from N101: 16.5, and at most 27 (published check B1).
const sample = [102, 106, 107, 114];

describe("an open range ends before the next of its prefix in the family", () => {
  // There are 20 numbers from N101 to N120, and 15 to N115.
  it.each([
    ["closed", "{ prefix: N, from: 121, to: 140 }", [16.5, 14, 20], 121],
    ["open", "{ prefix: N-, from: 116 }", [15, 14, 15], 116],
  ])("which is of another variant, and %s", (_, other, ends, before) => {
    const range = { prefix: "N", from: 101, to: null, before, distinct: 4, largest: 14 };
    expect(madeOf(beside(open, other, sample))).toEqual({ ends, range });
  });

  // Counted backwards from N114: 113, 109, 108 and 101 are the 2nd, 6th, 7th and 14th; there are 20 after N94.
  it("and begins after the one before", () => {
    const { ends, range } = madeOf(
      beside("{ prefix: N, to: 114 }", "{ prefix: N, from: 1, to: 94 }", [113, 109, 108, 101]),
    );
    expect(ends).toEqual([16.5, 14, 20]);
    expect(range).toMatchObject({ after: 94, fromEnd: 14 });
  });

  it.each([
    ["has another prefix", "{ prefix: M, from: 121 }"],
    ["is the very same", open],
    ["came before", "{ prefix: N, from: 1, to: 100 }"],
    ["was left unused", "{ prefix: N, from: 121, to: 140, skipped: true }"],
  ])("but not by one that %s", (_, other) => {
    const range = { prefix: "N", from: 101, to: null, distinct: 4, largest: 14 };
    expect(madeOf(beside(open, other, sample))).toEqual({ ends: [16.5, 14, 27], range });
  });
});

describe("a serial of the next variant's range", () => {
  const next = "{ prefix: N, from: 121 }";

  it("does not count for the one before, and check tells of it", () => {
    const root = beside(open, next, [...sample, 125]);
    expect(madeOf(root).ends).toEqual([16.5, 14, 20]);
    const [found] = checkCollection(root).diagnostics.filter(({ code }) => code === "serial-out-of-range");
    expect(found?.expected).toBe('a serial within the ranges of "chest-a": N101 and on (before N121)');
    expect(toldOf(beside(open, "{ prefix: M, from: 121 }", [...sample, 125]))).not.toContain(
      "serial-out-of-range",
    );
  });

  it("speaks against the one before, and for the next", () => {
    const root = beside(open, next, [], { "content/items/one.md": item("serial: N125") });
    expect(publishedIn(root).items[0]?.identification).toMatchObject({
      verdict: "contradicted",
      candidates: [
        { variant: "chest-a", contradictions: ["serial"] },
        { variant: "chest-b", contradictions: [] },
      ],
    });
  });

  it("is what tells the two apart, so that it is the first to look for", () => {
    const root = beside(open, next, [], { "content/items/one.md": item("features: { lid: flat }") });
    expect(publishedIn(root).items[0]?.identification.lookNext[0]).toBe("serial");
  });
});
