import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCompleteness } from "../../../shared/assessments/completeness.ts";
import { assessDating, compareDates } from "../../../shared/assessments/dating.ts";
import { assessFamilyKey, type KeyStep } from "../../../shared/assessments/family-key.ts";
import { assessHazards, mayBeIn } from "../../../shared/assessments/hazards.ts";
import { assessIdentification } from "../../../shared/assessments/identification.ts";
import { comparedVariants } from "../../../shared/assessments/item-pair.ts";
import { assessMarks } from "../../../shared/assessments/matching-numbers.ts";
import { assessProvenance } from "../../../shared/assessments/provenance.ts";
import { compareVariants } from "../../../shared/assessments/variant-comparison.ts";
import { date, families, line, observations, part, range, variant } from "./given.ts";

const year = fc.integer({ min: 1900, max: 1999 });
const years = fc.tuple(year, year).map(([a, b]) => date(`${Math.min(a, b)}/${Math.max(a, b)}`));

describe("identification", () => {
  it("contradicts a variant exactly by those observed values that it is not found with", () => {
    fc.assert(
      fc.property(families, observations, ({ features, variants }, seen) => {
        const found = assessIdentification(
          { variant: "v0", serial: undefined, features: seen },
          variants,
          features,
        );
        for (const { variant: id, contradictions } of found.candidates) {
          const reference = variants.find((each) => each.id === id);
          const against = [...seen].filter(
            ([f, value]) => reference?.features.get(f)?.includes(value) === false,
          );
          expect(contradictions).toEqual(against.map(([f]) => f));
        }
        const free = found.candidates.filter(({ contradictions }) => contradictions.length === 0);
        expect(found.verdict === "contradicted").toBe(!free.some(({ variant: id }) => id === "v0"));
        if (found.verdict === "confirmed") expect(free.map(({ variant: id }) => id)).toEqual(["v0"]);
        expect(found.candidates[0]?.variant).toBe("v0");
      }),
    );
  });

  it("takes nothing back when more is looked at, and never looks twice", () => {
    fc.assert(
      fc.property(families, observations, observations, ({ features, variants }, some, more) => {
        const identify = (seen: ReadonlyMap<string, string>) =>
          assessIdentification({ variant: "v0", serial: undefined, features: seen }, variants, features);
        const before = identify(some);
        const after = identify(new Map([...more, ...some]));
        before.candidates.forEach(({ contradictions }, at) => {
          expect(after.candidates[at]?.contradictions).toEqual(expect.arrayContaining([...contradictions]));
        });
        for (const id of before.lookNext) expect(some.has(id)).toBe(false);
        if (before.verdict !== "consistent") expect(before.lookNext).toEqual([]);
      }),
    );
  });
});

describe("the key of a family", () => {
  it("leads a variant, whichever of its values it shows, to an end at which it stands", () => {
    fc.assert(
      fc.property(families, ({ features, variants }) => {
        const walk = (step: KeyStep, of: (typeof variants)[number]): void => {
          if (step.kind === "end") {
            expect(step.variants).toContain(of.id);
            return;
          }
          const shows = of.features.get(step.feature) ?? features.get(step.feature)?.values ?? [];
          for (const value of shows) {
            const answers = step.answers.filter(({ values }) => values.includes(value));
            expect(answers).toHaveLength(1);
            for (const { next } of answers) walk(next, of);
          }
        };
        const { key } = assessFamilyKey(features, variants);
        for (const each of variants) walk(key, each);
      }),
    );
  });
});

describe("dating", () => {
  it("is earlier one way round exactly where it is later the other", () => {
    fc.assert(
      fc.property(years, years, (a, b) => {
        const opposite = { later: "earlier", earlier: "later", fits: "fits", undated: "undated" } as const;
        expect(compareDates(b, a)).toBe(opposite[compareDates(a, b)]);
        expect(compareDates(a, a)).toBe("fits");
      }),
    );
  });

  it("never grows surer when a date grows vaguer", () => {
    fc.assert(
      fc.property(years, years, year, year, (made, issued, from, to) => {
        const [first, last] = made.text.split("/").map(Number) as [number, number];
        const vaguer = date(`${Math.min(first, from)}/${Math.max(last, to)}`);
        const verdict = compareDates(vaguer, issued);
        if (verdict !== "fits") expect(compareDates(made, issued)).toBe(verdict);
      }),
    );
  });

  it("dates a part by the first range that holds its serial, and only parts that bear one", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), years, (serial, issued) => {
        const ranges = [
          range({ from: 1, to: 100, made: date("1910") }),
          range({ from: 101, to: 200, made: date("1950") }),
        ];
        const reference = variant("a", { issued, parts: [part("lens", { serials: ranges }), part("hook")] });
        const { parts } = assessDating(reference, {
          serial: undefined,
          parts: new Map([
            ["lens", [line("present", { serial: String(serial) })]],
            ["hook", [line("present", { serial: String(serial) })]],
          ]),
        });
        expect([...parts.keys()]).toEqual(["lens"]);
        expect(parts.get("lens")?.[0]?.made).toBe(serial <= 100 ? "1910" : serial <= 200 ? "1950" : null);
      }),
    );
  });
});

describe("matching numbers", () => {
  const number = fc.integer({ min: 1, max: 9999 }).map(String);

  it("match whatever the number and the order of the marks, and another's is named", () => {
    fc.assert(
      fc.property(number, number, fc.boolean(), (set, other, turned) => {
        const parts = [part("tray", { marks: ["No. {set}", "OAK"] })];
        const marked = (marks: string[]) =>
          assessMarks(parts, {
            set,
            parts: new Map([["tray", [line("present", { marks: turned ? marks.toReversed() : marks })]]]),
          }).get("tray");
        expect(marked([`no. ${set}`, "oak"])?.verdict).toBe("matching");
        const strange = marked([`No. ${other}`, "OAK"]);
        expect(strange?.verdict).toBe(other === set ? "matching" : "other-set");
        expect(strange?.otherSet).toBe(other === set ? null : other);
      }),
    );
  });
});

describe("hazards", () => {
  it("grow fewer, never more, as parts are found to be gone", () => {
    const register = new Map(
      ["lead", "mercury"].map((id) => [
        id,
        { id, name: id, caution: "", translated: {}, source: "", url: undefined, note: undefined },
      ]),
    );
    const reference = variant("a", {
      parts: [part("p", { hazards: ["mercury"] }), part("q", { hazards: ["lead", "mercury"] }), part("r")],
    });
    const states = fc.constantFrom("present", "absent", "unverified", "substitute", "not-issued" as const);
    fc.assert(
      fc.property(fc.record({ p: states, q: states, r: states }, { requiredKeys: [] }), (written) => {
        const found = (lines: Partial<Record<string, Parameters<typeof line>[0]>>) => {
          const parts = new Map(Object.entries(lines).map(([id, state]) => [id, [line(state ?? "present")]]));
          const completeness = assessCompleteness(reference, { parts, extras: [] });
          return assessHazards(reference.parts.values(), mayBeIn(completeness), [], register);
        };
        const before = found(written);
        const after = found({ ...written, q: "absent" });
        const named = (findings: typeof before) =>
          findings.flatMap(({ hazard, parts }) => parts.map((id) => `${hazard.id} ${id}`));
        expect(named(before)).toEqual(expect.arrayContaining(named(after)));
        expect(after.some(({ parts }) => parts.includes("q"))).toBe(false);
      }),
    );
  });
});

describe("provenance", () => {
  const event = fc.oneof(
    years,
    year.map((each) => date(String(each))),
    fc.integer({ min: 190, max: 199 }).map((tens) => date(`${tens}X`)),
  );
  const assess = (events: readonly ReturnType<typeof date>[]) =>
    assessProvenance(
      date("1920/1925"),
      events.map((each) => ({ date: each })),
      date("1980-05"),
    );

  it("documents the fewest years that the events allow, within the life of the object", () => {
    fc.assert(
      fc.property(fc.array(event, { maxLength: 6 }), (events) => {
        // By hand: it was there until the examination, or until the end of a later event, of a decade its first year.
        const ends = events.map(({ text }) => Number(text.replace("X", "0").split("/").at(-1)));
        const lastYear = Math.max(1980, ...ends);
        // Every year of what is dated to years, and that of the examination; of decades, each that holds none of them
        // counts one.
        const certain = new Set([1980]);
        const decades = new Set<number>();
        for (const { text } of events) {
          if (text.endsWith("X")) decades.add(Number(text.slice(0, 3)));
          else {
            const [first = 0, last = first] = text.split("/").map(Number);
            for (let at = first; at <= last; at++) if (at >= 1920) certain.add(at);
          }
        }
        const vague = [...decades].filter(
          (tens) => tens >= 192 && ![...certain].some((at) => Math.floor(at / 10) === tens),
        );
        const found = assess(events);
        expect(found.lifetimeYears).toBe(lastYear - 1919);
        expect(found.documentedYears).toBe(certain.size + vague.length);
      }),
    );
  });

  it("does not depend on the order of the events, and no event after the issue makes the gaps longer", () => {
    fc.assert(
      fc.property(fc.array(event, { maxLength: 6 }), event, (events, more) => {
        // One in the years of issue tells when it was issued, so that what is not known may begin sooner.
        fc.pre((more.latestStart ?? 0) >= (date("1920/1925").latest ?? 0));
        const found = assess(events);
        expect(assess(events.toReversed())).toEqual(found);
        const within = (gaps: typeof found.gaps, last: number) =>
          gaps.reduce((sum, { years: length, to }) => (to <= last ? sum + length : sum), 0);
        const end = Math.max(...found.gaps.map(({ to }) => to), 0);
        expect(within(assess([...events, more]).gaps, end)).toBeLessThanOrEqual(
          within(found.gaps, end) + 1e-9,
        );
        for (const { years: shortest, longest } of found.gaps) {
          expect(shortest).toBeGreaterThan(0);
          if (longest !== null) expect(longest).toBeGreaterThanOrEqual(shortest);
        }
      }),
    );
  });
});

describe("comparison", () => {
  it("of variants marks a row as different exactly where two cells are", () => {
    fc.assert(
      fc.property(families, ({ features, variants }) => {
        for (const { id, cells, differs } of compareVariants({ features }, variants).rows) {
          expect(cells).toHaveLength(variants.length);
          const found = variants.map((each) => each.features.get(id)?.join());
          expect(differs).toBe(found.some((each) => each !== found[0]));
        }
      }),
    );
  });

  it("of items never pairs one with itself, nor two twice, and keeps within the limit", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 6 }), (sizes) => {
        const chosen = comparedVariants(new Map(sizes.map((size, of) => [`v${of}`, size])));
        const of = [...chosen].map((id) => sizes[Number(id.slice(1))] ?? 0);
        for (const size of of) expect(size).toBeGreaterThan(1);
        const pairs = of.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
        expect(pairs).toBeLessThanOrEqual(1000);
      }),
    );
  });
});
