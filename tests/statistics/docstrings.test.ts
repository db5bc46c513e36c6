import { readdirSync, readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";

/** Every `Checks` of a docstring is run: what the documentation says a function answers, it answers. */
const ROOMS = ["statistics", "dates", "words"];

interface Check {
  readonly call: string;
  readonly answer: string;
}

function checksIn(source: string): Check[] {
  return [...source.matchAll(/\/\*\*(.*?)\*\//gs)].flatMap(([, comment = ""]) => {
    const lines = comment.split("\n").map((line) => line.replace(/^\s*\* ?/, ""));
    const start = lines.findIndex((line) => /^Checks\s/.test(line));
    if (start < 0) return [];
    const length = lines.slice(start + 1).findIndex((line) => !/^ {4}/.test(line));
    return lines
      .slice(start, start + 1 + length)
      .flatMap((line) => line.replace(/^Checks\s+/, "").split(/ {4,}/))
      .map((line) => line.trim())
      .filter((line) => line.includes("=>"))
      .map((line) => {
        const at = line.lastIndexOf(" => ");
        return { call: line.slice(0, at), answer: line.slice(at + 4) };
      });
  });
}

/** Numbers agree to the decimals that the docstring prints. */
function expectAnswer(found: unknown, expected: unknown): void {
  if (typeof expected === "number" && Number.isFinite(expected)) {
    const decimals = String(expected).split(".")[1]?.length ?? 9;
    expect(found).toBeCloseTo(expected, Math.min(decimals, 12));
  } else if (typeof expected === "object" && expected !== null) {
    expect(Object.keys(found as object)).toEqual(Object.keys(expected));
    for (const [key, value] of Object.entries(expected))
      expectAnswer((found as Record<string, unknown>)[key], value);
  } else {
    expect(found).toBe(expected);
  }
}

for (const room of ROOMS) {
  const folder = new URL(`../../shared/${room}/`, import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"));
  describe(`the docstrings of shared/${room}`, async () => {
    const modules = await Promise.all(files.map((file) => import(new URL(file, folder).href)));
    const names = Object.assign({}, ...modules);
    for (const file of files) {
      for (const { call, answer } of checksIn(readFileSync(new URL(file, folder), "utf8"))) {
        it(`${file}: ${call} => ${answer}`, () => {
          expectAnswer(runInNewContext(call, names), runInNewContext(`(${answer})`));
        });
      }
    }
  });
}

describe("the docstrings of the estimators", () => {
  it.each([
    "alpha",
    "chao1",
    "chapman",
    "coverage",
    "expected-entropy",
    "gower",
    "gower-table",
    "normal-quantile",
    "poisson-rate",
    "serial-total",
    "survival-ratio",
    "waiting-time",
    "wilson",
  ])("%s says what it computes, by which formula, in which unit, with check values and errors", (name) => {
    const source = readFileSync(new URL(`../../shared/statistics/${name}.ts`, import.meta.url), "utf8");
    for (const heading of ["Formula", "Units", "Checks", "Throws"])
      expect(source).toMatch(new RegExp(`\\* ${heading} {2}`));
    expect(checksIn(source).length).toBeGreaterThan(0);
  });
});
