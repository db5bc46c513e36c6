import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { repository } from "../commands/run.ts";

interface Manifest {
  license?: string;
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
  scripts?: Record<string, string>;
}

const manifestOf = (folder: string) =>
  JSON.parse(readFileSync(path.join(repository, folder, "package.json"), "utf8")) as Manifest;

const guide = readFileSync(path.join(repository, "DEVELOPERS.md"), "utf8");
const own = manifestOf(".");
const used = Object.keys(own.dependencies ?? {});
const all = [...used, ...Object.keys(own.devDependencies ?? {})];

/** Licences under which a package may be part of an MIT-licensed tool, and those that only a tool beside it may have. */
const open =
  /^\(?(?:MIT|ISC|BSD-2-Clause|BSD-3-Clause|Apache-2\.0|0BSD|OFL-1\.1|MPL-2\.0|MIT OR Apache-2\.0|Apache-2\.0 OR MIT)\)?$/;

describe("every dependency", () => {
  it.each(all)("%s is in DEVELOPERS.md, with its licence and the reason for it", (name) => {
    const row = guide.split("\n").find((line) => line.startsWith("|") && line.includes(`\`${name}\``));
    const byType = name.startsWith("@types/") && guide.includes("`@types/*`");
    expect(row !== undefined || byType).toBe(true);
  });

  it.each(all)("%s has an open licence", (name) => {
    expect(manifestOf(`node_modules/${name}`).license).toMatch(open);
  });

  it.each(all)("%s is pinned", (name) => {
    expect({ ...own.dependencies, ...own.devDependencies }[name]).toMatch(/^\d+\.\d+\.\d+$/);
  });

  it("DEVELOPERS.md names none that is not used", () => {
    const rows = guide
      .split("\n")
      .filter((line) => /^\| `[@a-z]/.test(line) && /MIT|ISC|BSD|Apache|OFL|MPL/.test(line));
    const named = rows.flatMap((line) =>
      [...(line.split("|")[1] ?? "").matchAll(/`([^`]+)`/g)].map(([, name]) => name ?? ""),
    );
    expect(named.filter((name) => name !== "@types/*" && !all.includes(name))).toEqual([]);
  });
});
