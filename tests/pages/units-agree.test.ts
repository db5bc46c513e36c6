import { expect, it } from "vitest";
import { itemPage } from "../../shared/pages/item/item-page.ts";
import {
  catalogueOf,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../collections/collection.ts";

const variant = `parts:
  wheel: { name: Wheel, quantity: 3, accepts: [{ model: later-wheel, credit: 0.5 }] }
  rod: { name: Rod, quantity: 5 }
  strap: { name: Strap }
  oil: { name: Oil, quantity: 4, weight: 1, standing: consumable }
  rag: { name: Rag, weight: 3, standing: consumable }
`;

const found = item(`parts:
  wheel: [{ state: present, quantity: 1 }, { state: substitute, quantity: 1, model: later-wheel, rest: absent }]
  rod: [{ state: present, quantity: 3 }, { state: unverified, quantity: 1, rest: absent }]
  strap: absent
  oil: { state: present, quantity: 1, rest: absent }
  rag: present`);

/*
 * By hand: wheels 1 + 0.5 = 1.5 of 3; rods 3, or 4 with the doubtful one, of 5; the strap 0 of 1. Together 4.5 to 5.5 of 9.
 * Consumables: 1 + 1 = 2 of 5 units; by weight (1/4 · 1 + 1 · 3) / 4 = 81.25%.
 */
it("counts units in one way in the list of parts, in the findings and in completeness by count", () => {
  const published = publishedIn(writeCollection(smallCollection(variant, { "content/items/one.md": found })));
  const [one] = published.items;
  if (!one) throw new Error("no item");
  const { completeness, findings, groups } = itemPage(one, catalogueOf(published));
  const rows = groups.flatMap((group) => group.rows);
  expect(rows.map(({ id, units, state }) => [id, units, state])).toEqual([
    ["wheel", "1.5 of 3", "1 present, 1 substitute, 1 missing"],
    ["rod", "3 to 4 of 5", "3 present, 1 unverified, 1 missing"],
    ["strap", "0", "missing"],
    ["oil", "1 of 4", "1 present, 3 missing"],
    ["rag", "1", "present"],
  ]);
  expect(completeness.counted).toBe(
    "4.5 to 5.5 of 9 units, counting a substitute as far as the reference accepts it",
  );
  expect(completeness.consumable).toBe("2 of 5 units; 81% by weight");
  expect(findings.find(({ id }) => id === "partial")?.findings.map(({ detail }) => detail)).toEqual([
    "1 present, 1 substitute, 1 missing",
    "3 present, 1 unverified, 1 missing",
    "consumable; 1 present, 3 missing",
  ]);
});
