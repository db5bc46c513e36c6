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

// The rag is counted apart and needed by a level, the strap by none: neither counts in the weight of key 3 and tray 1.
it("what is counted apart is wanted last where a level needs it, and says for which", async () => {
  const variant = `parts:
  rag: { name: Rag, standing: consumable }
  strap: { name: Strap, standing: optional }
  key: { name: Key, weight: 3 }
  tray: { name: Tray }
levels:
  - { id: full, name: Complete as issued, needs: { standing: [core, issued, consumable] } }
  - { id: ready, name: Ready for use, needs: { parts: [rag] } }
  - { id: shown, name: Fit to be shown, needs: { parts: [key] } }
`;
  const lacking = "parts: { rag: absent, strap: absent, key: absent, tray: present }";
  const giving =
    "parts: { rag: { state: present, quantity: 2 }, strap: { state: present, quantity: 2 }, key: present, tray: present }";
  const root = writeCollection(
    smallCollection(variant, {
      "content/items/one.md": item(lacking).replace("A chest", "One"),
      "content/items/two.md": item(giving).replace("A chest", "Two"),
    }),
  );
  expect((await runHere(["build"], root)).code).toBe(0);
  const words = (file: string) =>
    readFileSync(path.join(root, "_site", file), "utf8")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
  const needed = "Rag 1 needed for Complete as issued and Ready for use";
  expect(words("items/one/index.html")).toContain(`Key 1 75% ${needed}`);
  expect(words("wants/index.html")).toContain(
    "Key One Chest A 1 75% Rag One Chest A 1 needed for Complete as issued and Ready for use",
  );
  expect(words("wants/index.html")).toContain("Rag 1 Two One");
  for (const page of ["items/two/index.html", "wants/index.html"])
    expect(words(page)).not.toContain("Strap (1)");
  expect(words("items/two/index.html")).toContain("Spare here: Rag (1) .");
  const { wants } = JSON.parse(readFileSync(path.join(root, "_site/data/items/one.json"), "utf8"));
  expect(wants).toEqual([
    { part: "key", units: 1, gain: 0.75, neededFor: ["full", "shown"] },
    { part: "rag", units: 1, gain: 0, neededFor: ["full", "ready"] },
  ]);
});
