import path from "node:path";
import { expect, it } from "vitest";
import { buildInBackground } from "../../shared/commands/serve/build-in-background.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { run } from "./run.ts";

it("says of what is wrong just what the command says, line for line", async () => {
  const root = writeCollection(
    smallCollection("parts:\n  sextant: { standing: core }\n", {
      "content/items/one.md": item("parts: { sextant: { state: present, condtion: worn } }"),
    }),
  );
  const out = path.join(root, "_site");
  const said = await buildInBackground(root, out).problems;
  const { err } = await run(["build", "--root", root, "--out", out], root);
  expect(said).toMatch(/unknown-field.*\n/);
  expect(said?.trim()).toBe(err.replace("Nothing was written.", "").trim());
});
