import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

// The place is 1 and those strictly above ("standard competition ranking"), so that several may have it.
it("an outfit that shares its place in completeness says with how many", async () => {
  const root = writeCollection(
    smallCollection("parts: { key: { name: Key }, tray: { name: Tray } }\n", {
      "content/items/one.md": item("parts: { key: present, tray: present }"),
      "content/items/two.md": item("parts: { key: present, tray: present }"),
      "content/items/three.md": item("parts: { key: absent, tray: present }"),
    }),
  );
  expect((await runHere(["build"], root)).code).toBe(0);
  const placeOf = (id: string) =>
    /place [^<;]*/.exec(readFileSync(path.join(root, `_site/items/${id}/index.html`), "utf8"))?.[0];
  expect(placeOf("one")).toBe("place 1, shared by 2, of 3: this one and the 2 others recorded part by part");
  expect(placeOf("two")).toBe(placeOf("one"));
  expect(placeOf("three")).toBe("place 3 of 3: this one and the 2 others recorded part by part");
});

// Of parts that nobody looked at it is not recorded whether they are there: such an example is compared with no other.
it.each([
  ["tray: present", "no other is recorded part by part, to compare its completeness with"],
  ["key: present, tray: present", "place 2 of 2: this one and the one other recorded part by part"],
])("an outfit is placed among those that are recorded part by part (%s)", async (other, says) => {
  const root = writeCollection(
    smallCollection("parts: { key: { name: Key }, tray: { name: Tray } }\n", {
      "content/items/one.md": item("parts: { key: absent, tray: present }"),
      "content/items/two.md": item(`parts: { ${other} }`),
    }),
  );
  expect((await runHere(["build"], root)).code).toBe(0);
  expect(readFileSync(path.join(root, "_site/items/one/index.html"), "utf8")).toContain(says);
});
