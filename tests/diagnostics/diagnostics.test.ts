import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { check } from "../../shared/commands/check/check.ts";
import { catalogue, type DiagnosticCode } from "../../shared/diagnostics/catalogue.ts";

const folder = import.meta.dirname;
const codes = Object.keys(catalogue) as DiagnosticCode[];

/** What no repository should hold, made before an example is read. */
const prepared: Partial<Record<DiagnosticCode, (root: string) => void>> = {
  "file-too-large": (root) =>
    appendFileSync(path.join(root, "content/items/one.md"), "word ".repeat(900_000)),
};

/** What `check` prints of a copy of the example. */
async function printed(code: DiagnosticCode): Promise<string> {
  const root = mkdtempSync(path.join(tmpdir(), "fittedcase-diagnostic-"));
  cpSync(path.join(folder, code, "in"), root, { recursive: true, verbatimSymlinks: true });
  prepared[code]?.(root);
  const lines: string[] = [];
  const out = (text: string) => void lines.push(text);
  await check.run(["--root", root], { cwd: root, out, err: out });
  return `${lines.join("\n")}\n`;
}

describe("the catalogue of problems", () => {
  it.each(codes)("has an example of %s, and prints of it what it printed before", async (code) => {
    expect(existsSync(path.join(folder, code, "in")), `tests/diagnostics/${code}/in is there`).toBe(true);
    const found = await printed(code);
    expect(found).toMatch(new RegExp(`^\\S+:\\d+:\\d+  ${catalogue[code].severity}  ${code}$`, "m"));
    const file = path.join(folder, code, "expected.txt");
    if (!existsSync(file) && process.env.CI !== "true") writeFileSync(file, found);
    expect(found).toBe(readFileSync(file, "utf8"));
  });

  it("has no example of anything else", () => {
    const examples = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(examples.map(({ name }) => name).filter((name) => !Object.hasOwn(catalogue, name))).toEqual([]);
  });
});
