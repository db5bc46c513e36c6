import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import type { PartLine } from "../../../shared/records/item.ts";
import type { Level, Part } from "../../../shared/records/variant.ts";
import type { Standing, State } from "../../../shared/terms/states.ts";
import { line, part } from "./given.ts";

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
      part(`p${at}`, {
        standing: at === 0 ? "core" : standing,
        quantity,
        weight,
        accepts: new Map([["other", 0.5]]),
      }),
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
