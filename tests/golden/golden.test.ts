import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { siteFiles } from "../collections/site-files.ts";
import { repository, run } from "../commands/run.ts";

const folder = path.join(repository, "tests/golden");
const cases = readdirSync(folder, { withFileTypes: true }).flatMap((each) => (each.isDirectory() ? [each.name] : []));

/** Every file that is not a page or an asset, whole; and of all files, that they are there. */
function golden(site: string): Map<string, string> {
  const files = siteFiles(site);
  const names = [...files.keys()].filter((name) => !name.startsWith("assets/"));
  const texts = new Map([["files.txt", `${names.join("\n")}\n`]]);
  for (const name of names) {
    const text = files.get(name)?.toString("utf8") ?? "";
    // Line by line, so that a difference can be read.
    if (name.endsWith(".json")) texts.set(name, `${JSON.stringify(JSON.parse(text), null, 2)}\n`);
    else if (!name.endsWith(".html")) texts.set(name, text);
  }
  return texts;
}

// Read by a person when it changes: GOLDEN=write npx vitest run … writes it anew, and git shows what changed.
describe.each(cases)("%s", (name) => {
  it("gives the same data files as before", async () => {
    const site = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-golden-")), "site");
    const built = await run(["build", "--root", path.join(folder, name, "in"), "--out", site], repository);
    expect(built).toMatchObject({ code: 0, err: "" });
    const found = golden(site);
    const expected = path.join(folder, name, "out");
    if (process.env.GOLDEN === "write" && process.env.CI !== "true") {
      rmSync(expected, { recursive: true, force: true });
      for (const [file, text] of found) {
        mkdirSync(path.dirname(path.join(expected, file)), { recursive: true });
        writeFileSync(path.join(expected, file), text);
      }
    }
    expect(existsSync(expected)).toBe(true);
    const before = new Map([...siteFiles(expected)].map(([file, bytes]) => [file, bytes.toString("utf8")]));
    expect([...found.keys()].sort()).toEqual([...before.keys()].sort());
    for (const [file, text] of found) expect(text, file).toBe(before.get(file));
  });
});
