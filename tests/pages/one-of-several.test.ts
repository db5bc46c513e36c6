import { expect, it } from "vitest";
import { itemTable } from "../../shared/pages/prose/item-table.ts";
import { itemsAt } from "../../shared/publication/references/items-at.ts";
import {
  catalogueOf,
  dataOf,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../collections/collection.ts";
import { openSearch } from "../search/open-search.ts";

const files = smallCollection("parts: { pen: { name: Pen, quantity: 4 }, cup: { name: Cup } }\n", {
  "content/items/one.md": item("parts: { pen: { state: present, quantity: 3, rest: absent }, cup: present }"),
  "content/items/two.md": item("parts: { pen: present, cup: absent }"),
  "content/items/three.md": item("parts: { pen: present, cup: present }"),
});

// Of four pens one is gone: a pen is missing, whoever asks.
it("what is missing of several is missing, in a table, a spreadsheet and a search alike", () => {
  const published = publishedIn(writeCollection(files));
  const index = catalogueOf(published);
  const table = itemsAt(
    [
      ["missing", ["pen"]],
      ["show", ["missing"]],
    ],
    index,
  );
  if ("problem" in table || table.value.kind !== "items") throw new Error("No table of items was found.");
  expect(itemTable(table.value, index).rows).toEqual([
    {
      item: expect.objectContaining({ address: "/items/one/" }),
      cells: [expect.stringMatching(/^Pen \(1 of 4/)],
    },
  ]);
  expect(openSearch(published).ask("?missing=pen")).toEqual(["one"]);
  expect(openSearch(published).ask("?missing=cup")).toEqual(["two"]);

  const [header = "", ...rows] = String(dataOf(files).get("/data/items.csv")).trim().split("\r\n");
  const column = header.split(",").indexOf("partial");
  expect(rows.map((row) => [row.split(",")[0], row.split(",")[column]])).toEqual([
    ["one", "pen"],
    ["three", ""],
    ["two", ""],
  ]);
});
