import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

it("the want list leaves out what was sold, and what is known from elsewhere", async () => {
  const parts = "parts: { key: absent, tray: { state: present, quantity: 2 } }";
  const root = writeCollection(
    smallCollection("parts: { key: { name: Key }, tray: { name: Tray } }\n", {
      "content/items/one.md": item(parts),
      "content/items/two.md": item(`status: offered\n${parts}`),
      "content/items/three.md": item(`status: sold\n${parts}`),
      "content/items/four.md": item(`status: reference\n${parts}`),
    }),
  );
  expect((await runHere(["build"], root)).code).toBe(0);
  const page = readFileSync(path.join(root, "_site/wants/index.html"), "utf8");
  const named = [...page.matchAll(/items\/(\w+)\/#part-(\w+)/g)].map(([, id, part]) => `${id} ${part}`);
  expect(named.sort()).toEqual(["one key", "one tray", "two key", "two tray"]);
});
