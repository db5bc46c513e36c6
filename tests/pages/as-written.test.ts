import { beforeAll, describe, expect, it } from "vitest";
import { noMedia } from "../../shared/images/media.ts";
import { indexCollection } from "../../shared/pages/collection-index.ts";
import { nearestView } from "../../shared/pages/item/item-completing.ts";
import { sightingsPages } from "../../shared/pages/variant/sightings-page.ts";
import { remarksInWords } from "../../shared/pages/views/item-parts.ts";
import type { PublishedCollection } from "../../shared/publication/published.ts";
import { english } from "../../shared/words/en/english.ts";
import { item, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const log = `seen,variant,kind,example,present,condition
2004,chest-a,record,Barnes-Hall case,rest,as-found
2005,chest-a,record,Barnes-Hall case,rest,
`;

describe("what is written in a line of free text", () => {
  let published: PublishedCollection;
  beforeAll(() => {
    published = publishedIn(
      writeCollection(
        smallCollection(
          "parts: { tray: {}, bow: { name: Bow, accepts: [{ model: later-tin, credit: 1 }] } }\n",
          {
            "content/sightings/log.csv": log,
            "content/items/one.md": item(
              "parts: { tray: { state: present, condition: so-so, repairs: [re-soldered 1962-03] }, bow: { state: substitute, model: later-tin } }",
            ),
          },
        ),
      ),
    );
  });
  const index = () => indexCollection(published, english, noMedia, new Map());

  it("keeps its hyphens on the page of an item, where an id loses them", () => {
    const remarks = published.items[0]?.parts.flatMap((part) => remarksInWords(part, english)).join("; ");
    expect(remarks).toMatch(/so-so.*re-soldered 1962-03/i);
    expect(remarks).toContain("later tin");
  });

  it("keeps them in the log, and where an example of the log is named", () => {
    const [variant] = published.variants;
    const [one] = published.items;
    if (!variant || !one) throw new Error("Nothing was published.");
    const [page] = sightingsPages(variant, index());
    expect(page?.make().rows.map(({ example, condition }) => [example?.name, condition])).toEqual([
      ["Barnes-Hall case", "as-found"],
      ["Barnes-Hall case", null],
    ]);
    expect(nearestView(one, index()).map(({ example }) => example.name)).toEqual(["Barnes-Hall case"]);
  });
});
