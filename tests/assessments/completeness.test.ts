import { describe, expect, it } from "vitest";
import { dataOf, item, smallCollection } from "../collections/collection.ts";

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
    const beyond = completenessOf(
      variant,
      "parts: { oil: [present, { state: substitute, model: later-tin }] }",
    );
    expect(beyond).toMatchObject({ weighted: { low: 1, high: 1 }, substitutes: [], surplus: ["oil"] });
    const two = completenessOf(
      variant,
      "parts: { oil: { state: substitute, model: later-tin, quantity: 2 } }",
    );
    expect(two).toMatchObject({
      weighted: { low: 0.5, high: 0.5 },
      counted: { low: 0.5, high: 0.5, expected: 1 },
      substitutes: ["oil"],
      surplus: ["oil"],
    });
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
