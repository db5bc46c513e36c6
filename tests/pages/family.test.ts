import { describe, expect, it } from "vitest";
import { familyPage } from "../../shared/pages/family/family-page.ts";
import { catalogueOf, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const pageOf = (first: string, second: string) => {
  const files = smallCollection(first, {
    "schemas/reference/chest/chest-b.yaml": `name: Chest B\n${second}`,
  });
  const published = publishedIn(writeCollection(files));
  const [family] = published.families;
  if (!family) throw new Error("No family was published.");
  return familyPage(family, catalogueOf(published));
};

describe("the page of a family", () => {
  // From the contract: "the comparison of its variants, the key that tells them apart, the serial chart".
  it("has the serials of its variants side by side, and nothing of them where none is known", () => {
    const serials = (from: number, to: number) => `serials: [{ prefix: H, from: ${from}, to: ${to} }]\n`;
    expect(pageOf(serials(101, 400), serials(401, 700)).serialPlot).toContain(
      "Chest A: H101 to H400, 0 serials seen. Chest B: H401 to H700, 0 serials seen.",
    );
    expect(pageOf("", "").serialPlot).toBeNull();
  });

  it("names what its variants rest on among its sources, each once", () => {
    const files = smallCollection("sources: [ledger]\n", {
      "content/sources.yaml": "- { id: ledger, title: The ledger }\n- { id: list, title: The list }\n",
      "schemas/reference/chest/chest-b.yaml": "name: Chest B\nsources: [list, ledger]\n",
    });
    const published = publishedIn(writeCollection(files));
    const [family] = published.families;
    if (!family) throw new Error("No family was published.");
    expect(familyPage(family, catalogueOf(published)).sources.map((link) => link.name)).toEqual([
      "The ledger",
      "The list",
    ]);
  });

  // By hand: "brass" is found on both, iron and steel on one of them only; a lid of either kind is on both.
  it("says which features may tell two variants apart where none is sure to", () => {
    const key = (lock: string) => `features: { lock: ${lock}, lid: [flat, domed] }\n`;
    expect(pageOf(key("[iron, brass]"), key("[brass, steel]")).key?.unseparated).toEqual([
      "Chest A and Chest B (perhaps Lock)",
    ]);
    expect(pageOf(key("[iron, brass]"), key("[brass, iron]")).key?.unseparated).toEqual([
      "Chest A and Chest B",
    ]);
    expect(pageOf(key("iron"), key("[brass, steel]")).key?.unseparated).toEqual([]);
  });
});
