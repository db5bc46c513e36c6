import { describe, expect, it } from "vitest";
import { run } from "./run.ts";

const commands = [
  "init",
  "new",
  "import",
  "export",
  "check",
  "explain",
  "checklist",
  "schemas",
  "serve",
  "build",
];

describe("fittedcase --help", () => {
  it("names every command", async () => {
    const { code, out } = await run(["--help"], "/");
    expect(code).toBe(0);
    expect([...out.matchAll(/^ {2}fittedcase ([a-z]+) /gm)].map(([, name]) => name)).toEqual(commands);
  });

  it.each(commands)("tells of %s its usage, what it does, and an example", async (name) => {
    const { code, out } = await run([name, "--help"], "/");
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`^Usage: fittedcase ${name}\\b`));
    expect(out).toMatch(new RegExp(`^Example: fittedcase ${name}\\b`, "m"));
  });
});
