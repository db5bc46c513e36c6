import { expect, it } from "vitest";
import { groupFamilies } from "../../shared/site/groups/family-groups.ts";
import { itemSlice } from "../../shared/site/live/item-slice.ts";
import { readTexts } from "../../shared/source/read-texts.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

// What the page of an item prints must be freed of the serials of all items that any of it names.
it("a page is made with the outfits whose serials its own text or the references name, and no others", () => {
  const other = (serial: string) => item(`serial: ${serial}`).replace("chest-a", "chest-b");
  const files = smallCollection("parts:\n  fork: { name: Fork, note: As in H2118 }\n", {
    "schemas/reference/chest/chest-b.yaml": "name: The H2119 chest\n",
    "content/items/one.md": `${item("serial: H1")}Like H2120.\n`,
    "content/items/two.md": other("H2118"),
    "content/items/three.md": other("H2119"),
    "content/items/four.md": other("H2120"),
    "content/items/five.md": other("H2121"),
  });
  const [group] = groupFamilies(readTexts(writeCollection(files)))?.groups ?? [];
  const one = group?.texts.find(({ id }) => id === "one");
  const slice = group && one && itemSlice(group, one);
  const items = slice?.texts.filter(({ kind }) => kind === "item").map(({ id }) => id);
  expect(items?.sort()).toEqual(["four", "one", "three", "two"]);
});
