import { describe, expect, it } from "vitest";
import { dataOf, item, smallCollection } from "../collections/collection.ts";

const outfit = `issued: 1901/1905
parts:
  case: { standing: core, weight: 5 }
  instrument: { standing: core, weight: 10, serials: [{ from: 1, to: 99, made: 1900/1904 }, { from: 100, made: 1920/1925 }] }
  lens: { standing: issued }
  oil: { standing: consumable }
  chalk: { standing: consumable, quantity: 12 }
levels:
  - { id: whole, name: Complete less consumables, needs: { standing: [core, issued] } }
  - { id: bare, name: Instrument only, needs: { parts: [instrument] } }
`;

interface Data {
  completeness: {
    weighted: { low: number; high: number };
    consumable: { weighted: { low: number } };
    level: { sure: string | null; possible: string | null };
    unverified: string[];
  };
  dating: { parts: Record<string, { verdict: string }> };
  parts: Record<string, { summary: string; dating: { verdict: string } }>;
}

const itemOf = (parts: string): Data =>
  dataOf(smallCollection(outfit, { "content/items/one.md": item(`parts: ${parts}`) })).get(
    "/data/items/one.json",
  ) as Data;

describe("what every cataloguer of such outfits takes for granted", () => {
  // Common practice, no source: what was issued to be used up is gone, and nobody calls the outfit incomplete.
  it("expendables that are gone leave an outfit complete, a case of an accessory that is gone does not", () => {
    const used = itemOf("{ case: present, instrument: present, lens: present, oil: absent, chalk: absent }");
    expect(used.completeness).toMatchObject({
      weighted: { low: 1, high: 1 },
      level: { sure: "whole", possible: "whole" },
      consumable: { weighted: { low: 0 } },
    });
    const bare = itemOf("{ case: absent, instrument: present, lens: present, oil: present, chalk: present }");
    // Weights 10 and 1 of 16.
    expect(bare.completeness.weighted).toEqual({ low: 11 / 16, high: 11 / 16 });
    expect(bare.completeness.level).toEqual({ sure: "bare", possible: "bare" });
  });

  // Common practice, no source: the bare instrument turns up often, the whole outfit hardly ever.
  it("a whole outfit may be rare where the bare instrument is not, and each level has its own figures", () => {
    const bare = Array.from({ length: 8 }, (_, at) => `200${at},chest-a,b${at % 7},offer,instrument,rest`);
    const log = ["seen,variant,example,kind,present,absent", ...bare, "2009,chest-a,w,offer,rest,"].join(
      "\n",
    );
    const { rarity } = dataOf(smallCollection(outfit, { "content/sightings/log.csv": log })).get(
      "/data/variants/chest-a.json",
    ) as {
      rarity: {
        levels: Record<string, Record<"share" | "survivors" | "appearance" | "wait", { value: number }>>;
      };
    };
    const { whole, bare: level } = rarity.levels;
    // Eight examples, one of them whole; nine offers in the ten years 2000 to 2009, one of a whole one.
    expect([whole?.share.value, level?.share.value]).toEqual([1 / 8, 1]);
    expect([whole?.appearance.value, level?.appearance.value]).toEqual([0.1, 0.9]);
    expect(whole?.survivors.value).toBeCloseTo((level?.survivors.value ?? 0) / 8, 12);
    expect(whole?.wait.value).toBeGreaterThan(level?.wait.value ?? 0);
  });

  // Common practice, no source: it may have been put in by those who used the outfit, or not.
  it("a part of a later pattern is unverified until it is established, and never called wrong or missing", () => {
    const found = itemOf(
      '{ case: present, instrument: { state: unverified, serial: "120" }, lens: present }',
    );
    expect(found.parts.instrument).toMatchObject({ summary: "unverified", dating: { verdict: "later" } });
    expect(found.completeness.unverified).toEqual(["instrument"]);
    // It counts for what is possible and not for what is certain: 6 of 16 to 16 of 16.
    expect(found.completeness.weighted).toEqual({ low: 6 / 16, high: 1 });
    const established = itemOf(
      '{ case: present, instrument: { state: present, serial: "120" }, lens: present }',
    );
    expect(established.parts.instrument).toMatchObject({ summary: "present", dating: { verdict: "later" } });
    expect(established.completeness.weighted).toEqual({ low: 1, high: 1 });
  });
});
