import { describe, expect, it } from "vitest";
import { everyPairUpTo, pairsAtMost, pairsToCompare } from "../../shared/assessments/item-comparison.ts";
import { item, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const ids = (count: number, prefix = "i"): string[] =>
  Array.from({ length: count }, (_, at) => `${prefix}${String(at).padStart(3, "0")}`);
const none = () => [];

describe("which pairs are compared", () => {
  it("every pair of a variant with no more than twelve items: n(n − 1)/2 of them", () => {
    for (let count = 0; count <= everyPairUpTo; count++) {
      const pairs = pairsToCompare(new Map([["a", ids(count)]]), none).get("a") ?? [];
      expect(pairs).toHaveLength((count * (count - 1)) / 2);
      for (const [first, second] of pairs) expect(first < second).toBe(true);
      expect(new Set(pairs.map(String)).size).toBe(pairs.length);
    }
  });

  it("of a larger one each item with those most like it, each pair once", () => {
    const items = ids(13);
    const next = (id: string) => [items[(items.indexOf(id) + 1) % items.length] ?? ""];
    const pairs = pairsToCompare(new Map([["a", items]]), next).get("a") ?? [];
    expect(pairs).toHaveLength(13);
    const both = (id: string) => [...next(id), items[(items.indexOf(id) + 12) % items.length] ?? ""];
    expect(pairsToCompare(new Map([["a", items]]), both).get("a")).toHaveLength(13);
  });

  it("small variants first, and none beyond the limit", () => {
    const variants = new Map(ids(30, "v").map((id, at) => [id, ids(2 + (at % 11), `${id}-`)]));
    const chosen = pairsToCompare(variants, none);
    const count = [...chosen.values()].reduce((sum, pairs) => sum + pairs.length, 0);
    expect(count).toBeLessThanOrEqual(pairsAtMost);
    const left = [...variants].filter(([id]) => !chosen.has(id)).map(([, items]) => items.length);
    const taken = [...variants].filter(([id]) => chosen.has(id)).map(([, items]) => items.length);
    if (left.length > 0) expect(Math.max(...taken)).toBeLessThanOrEqual(Math.min(...left));
  });
});

describe("a pair", () => {
  const collection = publishedIn(
    writeCollection(
      smallCollection(
        "parts:\n  lamp: { standing: core }\n  key: { standing: issued, quantity: 2 }\n  cork: { standing: consumable }\n",
        {
          "content/items/b.md": item(
            "features: { lock: iron, lid: flat }\nparts: { lamp: present, key: { state: present, quantity: 1, rest: absent }, cork: absent }",
          ),
          "content/items/a.md": item("features: { lock: iron }\nparts: { lamp: present, key: present }"),
        },
      ),
    ),
  );
  const [pair] = collection.comparisons;

  it("stands in the order of ids", () => expect(pair?.items).toEqual(["a", "b"]));

  it("says of each feature and part whether it tells them apart", () => {
    expect(pair?.features).toEqual([
      { id: "lock", contrast: "alike" },
      { id: "lid", contrast: "unknown" },
    ]);
    expect(pair?.parts).toEqual([
      { id: "lamp", contrast: "alike" },
      { id: "key", contrast: "differs" },
      { id: "cork", contrast: "unknown" },
    ]);
  });

  // Gower (1971), equation for the general coefficient, by hand: the lock agrees (1), the lamp is in both (1), of the
  // keys two of two and one of two are there (1 − |1 − ½| = ½); lid and cork are known of one only.
  it("is as alike as Gower has it, over what is known of both", () => {
    expect(pair?.likeness).toBeCloseTo((1 + 1 + 0.5) / 3, 12);
    expect(pair?.compared).toEqual({ features: ["lock"], parts: ["lamp", "key"] });
  });

  it("is as alike as either's page says of the other", () => {
    const [a] = collection.items;
    expect(a?.nearest.find(({ item: id }) => id === "b")?.likeness).toBe(pair?.likeness);
  });
});
