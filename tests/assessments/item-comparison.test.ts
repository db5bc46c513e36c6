import { describe, expect, it } from "vitest";
import { comparedVariants, everyPairUpTo, pairsAtMost } from "../../shared/assessments/item-pair.ts";
import { item, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const pairsOf = (count: number): number => (count * (count - 1)) / 2;

describe("which variants have every pair of their items compared", () => {
  it("those with two items at least, and no more than twelve", () => {
    for (let count = 0; count <= everyPairUpTo + 1; count++) {
      const is = comparedVariants(new Map([["a", count]])).has("a");
      expect(is, String(count)).toBe(count >= 2 && count <= everyPairUpTo);
    }
  });

  it("small variants first, and none beyond the limit", () => {
    const variants = new Map(Array.from({ length: 60 }, (_, at) => [`v${at}`, 2 + (at % 11)]));
    const chosen = comparedVariants(variants);
    const sizes = (is: boolean) =>
      [...variants].filter(([id]) => chosen.has(id) === is).map(([, count]) => count);
    const pairs = sizes(true).reduce((sum, count) => sum + pairsOf(count), 0);
    expect(pairs).toBeLessThanOrEqual(pairsAtMost);
    expect(sizes(false).length).toBeGreaterThan(0);
    expect(Math.max(...sizes(true))).toBeLessThanOrEqual(Math.min(...sizes(false)));
  });
});

describe("a pair", () => {
  const collection = () =>
    publishedIn(
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
  const thePair = () => collection().comparisons[0];

  it("stands in the order of ids", () => expect(thePair()?.items).toEqual(["a", "b"]));

  it("says of each feature and part whether it tells them apart", () => {
    const pair = thePair();
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
    const pair = thePair();
    expect(pair?.likeness).toBeCloseTo((1 + 1 + 0.5) / 3, 12);
    expect(pair?.compared).toEqual({ features: ["lock"], parts: ["lamp", "key"] });
  });

  it("is as alike as either's page says of the other", () => {
    const { items, comparisons } = collection();
    const [a] = items;
    expect(a?.nearest.find(({ item: id }) => id === "b")?.likeness).toBe(comparisons[0]?.likeness);
  });
});
