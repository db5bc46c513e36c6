import { describe, expect, it } from "vitest";
import { buildSearchIndex } from "../../shared/pages/search/build-search-index.ts";
import type { Audience } from "../../shared/publication/published.ts";
import {
  catalogueOf,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../collections/collection.ts";

/** Words that stand in one private place each, as a search would have them. */
const canaries = {
  owner: "canaryowner",
  eventNote: "canaryeventnote",
  partNote: "canarypartnote",
  label: "canarylabel",
  extraNote: "canaryextranote",
  caption: "canarycaption",
  storage: "canarystorage",
  insured: "canaryinsured",
  price: "876543",
  paid: "987654",
} as const;
/** Masked: whole they stand nowhere. */
const serials = ["271828", "314159"];

const root = writeCollection(
  smallCollection(
    "serials: [{ prefix: H, from: 271001, to: 272000, made: 1931 }]\nparts:\n  sextant: { standing: core, serials: [{ prefix: P, from: 1, made: 1931 }] }\n",
    {
      "content/items/one.md": item(
        `serial: H271828
parts:
  sextant: { state: present, serial: P314159, marks: ["P 314159"], note: ${canaries.partNote}, private: [note] }
extras: [{ name: Strap, note: ${canaries.extraNote}, private: [note] }]
labels: [{ kind: paper, text: [${canaries.label}], private: [text] }]
provenance:
  - { date: 2001, event: acquired, from: ${canaries.owner}, price: { amount: ${canaries.price}, currency: EUR }, private: [from] }
  - { date: 2003, event: mended, note: ${canaries.eventNote}, private: [note] }
storage: ${canaries.storage}
paid: { amount: ${canaries.paid}, currency: EUR }
private: { insured: ${canaries.insured} }
price: { amount: ${canaries.price}, currency: EUR }`,
      ),
      "content/items/two.md": item("serial: H271829"),
    },
  ),
);
const indexFor = (audience: Audience): string =>
  JSON.stringify(buildSearchIndex(catalogueOf(publishedIn(root, audience)))).toLowerCase();

describe("the search index", () => {
  const index = indexFor("public");

  it.each(Object.entries(canaries))("holds nothing private: %s", (_, canary) =>
    expect(index.includes(canary)).toBe(false),
  );

  it.each(serials)("holds no masked serial whole: %s", (serial) => {
    expect(index.includes(serial)).toBe(false);
    expect(index.includes(`${serial.slice(0, -2)}\u2022\u2022`)).toBe(true);
  });

  // The canaries would prove nothing if the owner's own index did not hold what a search reads of them.
  it.each([
    canaries.owner,
    canaries.eventNote,
    canaries.partNote,
    canaries.label,
    canaries.extraNote,
    ...serials,
  ])("of the owner's own build holds %s", (canary) =>
    expect(indexFor("private").includes(canary)).toBe(true),
  );
});
