import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../shared/assessments/completeness.ts";
import type { PartLine, State } from "../../shared/records/item.ts";
import type { Level, Part, Standing } from "../../shared/records/variant.ts";
import { dataOf, item, smallCollection } from "../collections/collection.ts";
import { line } from "./properties/given.ts";

interface Completeness {
  weighted: { low: number; high: number } | null;
  counted: { low: number; high: number; expected: number };
  consumable: { weighted: { low: number; high: number }; counted: { low: number; high: number } } | null;
  optional: unknown;
  level: { sure: string | null; possible: string | null };
  missing: string[];
  partial: string[];
  substitutes: string[];
  unverified: string[];
  unexamined: string[];
  surplus: string[];
  extras: { name: string; quantity: number }[];
}

function completenessOf(variant: string, frontMatter: string): Completeness {
  const data = dataOf(smallCollection(variant, { "content/items/one/index.md": item(frontMatter) }));
  return (data.get("/data/items/one.json") as { completeness: Completeness }).completeness;
}

const parts = (count: number, fields = "") =>
  `parts:\n${Array.from({ length: count }, (_, at) => `  p${at}: { standing: issued ${fields} }`).join("\n")}\n`;

describe("completeness is an interval: what is certain, and what is possible", () => {
  // Constructed input, worst-case bounds by hand after Manski (2003), Partial Identification of Probability
  // Distributions; published check B8: 8 present, 2 missing, 2 unknown of 12 equal parts.
  it("counts what is unknown neither in nor out", () => {
    const states = ["present", "absent", "unverified"].map((state, at) => ({
      state,
      parts: [8, 2, 2][at] ?? 0,
    }));
    let next = 0;
    const lines = states.flatMap(({ state, parts: count }) =>
      Array.from({ length: count }, () => `  p${next++}: ${state}`),
    );
    const { weighted, counted } = completenessOf(parts(12), `parts:\n${lines.join("\n")}`);
    expect(weighted?.low).toBeCloseTo(8 / 12, 12);
    expect(weighted?.high).toBeCloseTo(10 / 12, 12);
    expect(counted).toEqual({ low: 8, high: 10, expected: 12 });
  });

  // Published check B8: weights 5 present, 3 unknown, 1 present, 1 missing => 0.6 to 0.9.
  it("weighs parts by the reference", () => {
    const variant =
      "parts:\n  a: { standing: core, weight: 5 }\n  b: { standing: issued, weight: 3 }\n  c: { standing: issued }\n  d: { standing: issued }\n";
    const { weighted } = completenessOf(variant, "parts: { a: present, c: present, d: absent }");
    expect(weighted?.low).toBeCloseTo(0.6, 12);
    expect(weighted?.high).toBeCloseTo(0.9, 12);
  });

  it("takes a part without a line for unexamined, which is not absent", () => {
    const { weighted, unexamined, missing } = completenessOf(parts(2), "parts: { p0: present }");
    expect(weighted).toEqual({ low: 0.5, high: 1 });
    expect(unexamined).toEqual(["p1"]);
    expect(missing).toEqual([]);
  });

  const four = "parts:\n  shade: { standing: issued, quantity: 4 }\n";

  it.each([
    // Written state of a part issued in four, then low and high in units by hand.
    ["present", 4, 4],
    ["absent", 0, 0],
    ["unverified", 0, 4],
    ["{ state: present, quantity: 3 }", 3, 4],
    ["{ state: present, quantity: 3, rest: absent }", 3, 3],
    ["[{ state: present }, { state: absent }]", 1, 3],
    ["[{ state: present, quantity: 2 }, { state: unverified, quantity: 2 }]", 2, 4],
    ["[present]", 4, 4],
    ["{ state: present, quantity: 6 }", 4, 4],
  ])("reads %s as %d to %d of 4 units", (written, low, high) => {
    expect(completenessOf(four, `parts: { shade: ${written} }`).counted).toEqual({ low, high, expected: 4 });
  });

  it("lets what is more than issued never make up for another part", () => {
    const { weighted, surplus } = completenessOf(
      parts(2),
      "parts: { p0: { state: present, quantity: 2 }, p1: absent }",
    );
    expect(weighted).toEqual({ low: 0.5, high: 0.5 });
    expect(surplus).toEqual(["p0"]);
  });

  it("credits a substitute as the reference does, and any other not at all", () => {
    const variant = "parts:\n  oil: { standing: issued, accepts: [{ model: later-tin, credit: 0.5 }] }\n";
    const accepted = completenessOf(variant, "parts: { oil: { state: substitute, model: later-tin } }");
    expect(accepted.weighted).toEqual({ low: 0.5, high: 0.5 });
    expect(accepted.substitutes).toEqual(["oil"]);
    const other = completenessOf(variant, "parts: { oil: { state: substitute, model: jam-jar } }");
    expect(other.weighted).toEqual({ low: 0, high: 0 });
  });

  it("leaves a part that was never issued to this example out of every count", () => {
    const { weighted, counted, missing } = completenessOf(
      parts(2),
      "parts: { p0: present, p1: { state: not-issued, evidence: the issue book } }",
    );
    expect(weighted).toEqual({ low: 1, high: 1 });
    expect(counted.expected).toBe(1);
    expect(missing).toEqual([]);
  });

  // Common practice, no source: used-up consumables do not make an outfit incomplete.
  it("counts consumables and optional parts by themselves", () => {
    const variant =
      "parts:\n  body: { standing: core }\n  oil: { standing: consumable }\n  strap: { standing: optional }\n";
    const { weighted, consumable, optional } = completenessOf(
      variant,
      "parts: { body: present, oil: absent }",
    );
    expect(weighted).toEqual({ low: 1, high: 1 });
    expect(consumable?.weighted).toEqual({ low: 0, high: 0 });
    expect(optional).toEqual({ weighted: { low: 0, high: 1 }, counted: { low: 0, high: 1, expected: 1 } });
  });

  it("has no figure for a standing without parts", () => {
    const { consumable, optional } = completenessOf(parts(1), "parts: { p0: present }");
    expect([consumable, optional]).toEqual([null, null]);
  });

  it("names the best level that is sure and the best that is possible", () => {
    const variant = `parts:
  body: { standing: core }
  case: { standing: issued }
  oil: { standing: consumable }
levels:
  - { id: as-issued, name: As issued, needs: { standing: [core, issued, consumable] } }
  - { id: less-oil, name: Less oil, needs: { standing: [core, issued] } }
  - { id: bare, name: Bare, needs: { parts: [body] } }
`;
    expect(completenessOf(variant, "parts: { body: present, case: unverified }").level).toEqual({
      sure: "bare",
      possible: "as-issued",
    });
    expect(completenessOf(variant, "parts: { body: absent }").level).toEqual({ sure: null, possible: null });
    expect(completenessOf(variant, "parts: { body: present, case: present, oil: absent }").level).toEqual({
      sure: "less-oil",
      possible: "less-oil",
    });
  });
});

const part = (id: string, standing: Standing, quantity: number, weight: number): Part => ({
  id,
  name: id,
  group: undefined,
  standing,
  quantity,
  weight,
  serials: [],
  marks: [],
  hazards: [],
  accepts: new Map([["other", 0.5]]),
  plan: undefined,
  look: undefined,
  note: undefined,
});

const anyLine = fc
  .record({
    state: fc.constantFrom<State>("present", "absent", "substitute", "unverified", "not-issued"),
    quantity: fc.option(fc.integer({ min: 1, max: 5 }), { nil: undefined }),
    model: fc.constantFrom("other", "strange"),
  })
  .map(({ state, quantity, model }) => line(state, { quantity, model }));

const anyReference = fc
  .array(
    fc.record({
      standing: fc.constantFrom<Standing>("core", "issued", "consumable", "optional"),
      quantity: fc.integer({ min: 1, max: 6 }),
      weight: fc.double({ min: 0.1, max: 20, noNaN: true }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((drawn) =>
    drawn.map(({ standing, quantity, weight }, at) =>
      part(`p${at}`, at === 0 ? "core" : standing, quantity, weight),
    ),
  );

const levels: Level[] = [
  { id: "whole", name: "Whole", needs: { standing: ["core", "issued"], parts: [], groups: [] } },
];

const anyExample = anyReference.chain((drawn) =>
  fc.record({
    reference: fc.constant({ parts: new Map(drawn.map((each) => [each.id, each])), levels }),
    lines: fc.array(fc.array(anyLine, { maxLength: 3 }), {
      minLength: drawn.length,
      maxLength: drawn.length,
    }),
  }),
);

const assess = ({
  reference,
  lines,
}: {
  reference: { parts: Map<string, Part>; levels: Level[] };
  lines: PartLine[][];
}) =>
  assessCompleteness(reference, {
    parts: new Map(lines.flatMap((each, at) => (each.length > 0 ? [[`p${at}`, each] as const] : []))),
    extras: [],
  });

// Invariants of worst-case bounds under missing data (Manski 1989, Journal of Human Resources 24: 343-360).
describe("whatever is written of a part", () => {
  it("the bounds are in order and within 0 and 1", () => {
    fc.assert(
      fc.property(anyExample, (example) => {
        const { main, parts: findings } = assess(example);
        for (const { share } of findings.values()) {
          if (share) expect(0 <= share.low && share.low <= share.high && share.high <= 1).toBe(true);
        }
        if (!main) return;
        const { weighted, counted } = main;
        expect(0 <= weighted.low && weighted.low <= weighted.high + 1e-12 && weighted.high <= 1).toBe(true);
        expect(0 <= counted.low && counted.low <= counted.high && counted.high <= counted.expected).toBe(
          true,
        );
      }),
    );
  });

  it("examining a part never widens the interval", () => {
    fc.assert(
      fc.property(
        anyExample,
        fc.nat(),
        fc.constantFrom<State>("present", "absent"),
        (example, pick, state) => {
          const at = pick % example.lines.length;
          if ((example.lines[at]?.length ?? 0) > 0) return;
          const before = assess(example).main?.weighted;
          const after = assess({ ...example, lines: example.lines.with(at, [line(state)]) }).main?.weighted;
          if (!before || !after) return;
          expect(after.low).toBeGreaterThanOrEqual(before.low - 1e-12);
          expect(after.high).toBeLessThanOrEqual(before.high + 1e-12);
        },
      ),
    );
  });

  it("adding a present unit never lowers either end", () => {
    fc.assert(
      fc.property(anyExample, fc.nat(), (example, pick) => {
        const at = pick % example.lines.length;
        const lines = example.lines[at] ?? [];
        // A single line without a quantity speaks for all units; a second line would change what it says.
        if (lines.length === 1 || lines.some(({ state }) => state === "not-issued")) return;
        const before = assess(example).main?.weighted;
        const more =
          lines.length === 0
            ? [line("present", { quantity: 1 })]
            : [...lines, line("present", { quantity: 1 })];
        const after = assess({ ...example, lines: example.lines.with(at, more) }).main?.weighted;
        if (!before || !after) return;
        expect(after.low).toBeGreaterThanOrEqual(before.low - 1e-12);
        expect(after.high).toBeGreaterThanOrEqual(before.high - 1e-12);
      }),
    );
  });

  it("the order of the lines never matters", () => {
    fc.assert(
      fc.property(anyExample, (example) => {
        const reversed = { ...example, lines: example.lines.map((lines) => [...lines].reverse()) };
        expect(assess(reversed)).toEqual(assess(example));
      }),
    );
  });
});
