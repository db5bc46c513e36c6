import { mkdtempSync, renameSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { runHere } from "./run-here.ts";

const parts = "parts:\n  sextant: { standing: core }\n";
const article = "---\ntitle: Essay\n---\nText.\n";

const begun = async () => {
  const root = writeCollection(
    smallCollection(parts, {
      "schemas/reference/chest/chest-b.yaml": `name: Chest B\n${parts}`,
      "content/items/one/index.md": item(""),
      "content/items/two/index.md": item("formerly: [duo]"),
      "content/articles/essay.md": article,
      "content/articles/other.md": article,
    }),
  );
  const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-out-")), "site");
  const build = async () => (await runHere(["build", "--out", out], root)).out;
  return { root, build, first: await build(), at: (file: string) => path.join(root, file) };
};

describe("pages that the last site had and this one has not", () => {
  it("are told of after the last line of a build, once, and with what to do", async () => {
    const { root, build, first, at } = await begun();
    expect(first.trim().split("\n")).toHaveLength(1);
    expect(await build()).not.toContain("no longer");
    rmSync(at("content/items/one"), { recursive: true });
    rmSync(at("content/articles/essay.md"));
    rmSync(at("schemas/reference/chest/chest-b.yaml"));
    writeFiles(root, { "content/items/two/index.md": item("") });
    const [last = "", gone] = (await build()).trim().split("\n").slice(-2);
    expect(last).toMatch(/^1 item, /);
    expect(gone).toBe(
      "4 pages of the last site no longer exist: /articles/essay/, /items/duo/, /items/one/, /variants/chest-b/. " +
        'If a record has a new id, list the old one under "formerly": the old address then leads to the new one.',
    );
    expect(await build()).not.toContain("no longer");
  });

  it("are known without the cache, and are none where their addresses lead on", async () => {
    const { root, build, at } = await begun();
    rmSync(at(".cache"), { recursive: true });
    renameSync(at("content/items/one"), at("content/items/uno"));
    writeFiles(root, { "content/items/uno/index.md": item("formerly: [one]") });
    expect(await build()).not.toContain("no longer");
    rmSync(at(".cache"), { recursive: true });
    rmSync(at("content/articles/other.md"));
    expect(await build()).toContain("\n1 page of the last site no longer exists: /articles/other/. If");
  });

  it("are not all named where there are many", async () => {
    const { root, build, at } = await begun();
    const many = Array.from({ length: 20 }, (_, count) => `content/articles/a${count + 10}.md`);
    writeFiles(root, Object.fromEntries(many.map((file) => [file, article])));
    await build();
    for (const file of many) rmSync(at(file));
    expect(await build()).toMatch(
      /^20 pages of the last site no longer exist: \/articles\/a10\/, .*\/articles\/a21\/ and 8 more\. If/m,
    );
  });
});
