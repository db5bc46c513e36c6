import { beforeAll, describe, expect, it } from "vitest";
import { type CataloguePage, cataloguePages } from "../../shared/pages/collection/catalogue-page.ts";
import type { CatalogueIndex } from "../../shared/pages/listed/catalogue-index.ts";
import { buildSearchIndex } from "../../shared/pages/search/build-search-index.ts";
import { catalogueOf, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";
import { type OpenSearch, openSearch } from "./open-search.ts";

/** Three variants with a level and a part of one id, which means the same in two of them. */
const variant = (level: string, part: string): string =>
  `levels:\n  - { id: used, name: ${level}, needs: { parts: [glass] } }\nparts:\n  glass: { name: ${part}, standing: core }\n  box: { standing: core }\n`;
const item = (of: string, glass: string): string =>
  `---\ntitle: Of ${of}\nvariant: ${of}\nparts: { glass: ${glass} }\n---\nText.\n`;

let catalogue: CatalogueIndex;
let search: OpenSearch;
let pages: CataloguePage[];
beforeAll(() => {
  const published = publishedIn(
    writeCollection(
      smallCollection(variant("With its lens", "Folding lens"), {
        "schemas/reference/chest/chest-b.yaml": `name: Chest B\n${variant("With its lens", "Folding lens")}`,
        "schemas/reference/lamp/family.yaml": "name: Lamps\n",
        "schemas/reference/lamp/lamp-a.yaml": `name: Lamp A\n${variant("With its shade", "Glass shade")}`,
        ...Object.fromEntries(
          ["chest-a", "chest-b", "lamp-a"].flatMap((of) => [
            [`content/items/${of}-has.md`, item(of, "present")],
            [`content/items/${of}-lacks.md`, item(of, "absent")],
          ]),
        ),
      }),
    ),
  );
  catalogue = catalogueOf(published);
  search = openSearch(published);
  pages = cataloguePages(catalogue).map(({ make }) => make());
});

const lens = ["chest-a-has", "chest-b-has"];
const entriesAt = (address: string) =>
  pages
    .find((page) => page.address === address)
    ?.groups.flatMap(({ entries }) => entries.map(({ id }) => id));

describe("an id that means one thing in a variant and another thing in the next", () => {
  it("is offered once for each meaning, by its name", () => {
    expect(pages[0]?.finder?.levels).toEqual([
      { id: "used/chest-a", name: "With its lens" },
      { id: "used/lamp-a", name: "With its shade" },
    ]);
    expect(buildSearchIndex(catalogue).details.parts.map(([glass]) => glass)).toEqual([
      { id: "glass/chest-a", name: "Folding lens" },
      { id: "glass/chest-a", name: "Folding lens" },
      { id: "glass/lamp-a", name: "Glass shade" },
    ]);
  });

  it("is found by its meaning, and alone by all of them", () => {
    expect(search.ask("?level=used/chest-a")).toEqual(lens);
    expect(search.ask("?level=used/lamp-a")).toEqual(["lamp-a-has"]);
    expect(search.ask("?level=used")).toEqual([...lens, "lamp-a-has"]);
    expect(search.ask("?level=use")).toEqual([]);
    expect(search.ask("?missing=glass/lamp-a")).toEqual(["lamp-a-lacks"]);
    expect(search.ask("?missing=glass/chest-a")).toEqual(["chest-a-lacks", "chest-b-lacks"]);
    expect(search.ask("?missing=glass")).toEqual(["chest-a-lacks", "chest-b-lacks", "lamp-a-lacks"]);
    // What has one meaning keeps its id. Nobody looked for the box of any.
    expect(search.ask("?missing=box")).toEqual([]);
  });

  it("has a list for each meaning, and where the list of the id stood all of them", () => {
    expect(entriesAt("/items/by/level/used/chest-a/")).toEqual(lens);
    expect(entriesAt("/items/by/level/used/lamp-a/")).toEqual(["lamp-a-has"]);
    expect(entriesAt("/items/by/level/used/")).toEqual([...lens, "lamp-a-has"]);
    const titles = new Map(pages.map(({ address, title }) => [address, title]));
    expect(titles.get("/items/by/level/used/lamp-a/")).toBe("Outfits at the level: With its shade");
    expect(titles.get("/items/by/level/used/")).toBe("Outfits at the level: With its lens; With its shade");
    expect(pages[0]?.lists.flatMap(({ lists }) => lists.map(({ address }) => address))).not.toContain(
      "/items/by/level/used/",
    );
  });
});
