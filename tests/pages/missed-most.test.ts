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
  rag: { name: Rag, weight: 30, standing: consumable }
  strap: { name: Strap, weight: 20, standing: optional }
  pin: { name: Pin, weight: 4 }
  jar: { name: Jar, weight: 12, quantity: 6 }
  pliers: { name: Pliers, weight: 6 }
  chalk: { name: Chalk, weight: 10, quantity: 4, standing: consumable }
  key: { name: Key, weight: 10, quantity: 2 }
`;

const found = item(`parts:
  rag: absent
  strap: absent
  pin: absent
  jar: { state: present, quantity: 4, rest: absent }
  pliers: absent
  chalk: { state: present, quantity: 3, rest: absent }
  key: { state: present, quantity: 1, rest: absent }`);

/*
 * By hand, the weight that is gone: pliers 6, key 10 * 1/2 = 5, pin 4 and jar 12 * 2/6 = 4, as the reference has them;
 * counted apart: rag 30, strap 20, chalk 10 * 1/4 = 2.5. It is the one example on record, and has none of them: 0 of 1.
 */
it("names what is missed most first, and what is counted apart last", () => {
  const published = publishedIn(writeCollection(smallCollection(variant, { "content/items/one.md": found })));
  const [one] = published.items;
  if (!one) throw new Error("no item");
  const { brief, findings } = itemPage(one, catalogueOf(published));
  expect([...brief.missing.map(({ name }) => name), brief.more]).toEqual([
    "Pliers",
    "Key (1 of 2 gone)",
    "Pin",
    "Jar (2 of 6 gone)",
    "Rag",
    "Strap",
    "1 more",
  ]);
  const told = (list: string) =>
    findings.find(({ id }) => id === list)?.findings.map(({ name, detail }) => [name, detail]);
  expect(told("missing")).toEqual([
    ["Pliers", "found in 0% of recorded examples"],
    ["Pin", "found in 0% of recorded examples"],
    ["Rag", "consumable; found in 0% of recorded examples"],
    ["Strap", "optional; found in 0% of recorded examples"],
  ]);
  expect(told("partial")).toEqual([
    ["Key", "1 present, 1 missing"],
    ["Jar", "4 present, 2 missing"],
    ["Chalk", "consumable; 3 present, 1 missing"],
  ]);
});
