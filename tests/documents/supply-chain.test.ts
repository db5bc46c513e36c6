import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { repository } from "../commands/run.ts";

interface Locked {
  version: string;
  license?: string;
  dev?: boolean;
  hasInstallScript?: boolean;
  resolved?: string;
  integrity?: string;
}

const read = (file: string) => JSON.parse(readFileSync(path.join(repository, file), "utf8"));
const lock = read("package-lock.json") as { packages: Record<string, Locked> };
const packages = Object.entries(lock.packages).filter(([where]) => where !== "");

/**
 * Licences that a part of an MIT-licensed tool may have: permissive ones; SIL's for type; and the LGPL of libvips,
 * which comes as a library of its own that sharp loads (LGPL 3, section 4).
 */
const permissive = new Set([
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "BSL-1.0",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Python-2.0",
  "OFL-1.1",
]);

const isFit = (where: string, license: string): boolean =>
  license
    .split(" AND ")
    .every(
      (each) =>
        permissive.has(each) ||
        (each === "LGPL-3.0-or-later" && where.startsWith("node_modules/@img/sharp-")),
    );

describe("whatever is installed with the tool", () => {
  it("runs no script of its own while it is installed", () => {
    expect(packages.filter(([, { hasInstallScript }]) => hasInstallScript).map(([where]) => where)).toEqual(
      [],
    );
  });

  it("has a licence that goes with MIT", () => {
    const unfit = packages.filter(([where, { dev, license }]) => !dev && !isFit(where, license ?? ""));
    expect(unfit.map(([where, { license }]) => `${where}: ${license}`)).toEqual([]);
  });

  it("is known by its digest", () => {
    expect(packages.filter(([, { integrity }]) => !integrity).map(([where]) => where)).toEqual([]);
  });
});

it("`npm run sbom` lists all of it, as CycloneDX (ECMA-424)", () => {
  const { stdout } = spawnSync("npm", ["run", "--silent", "sbom"], {
    cwd: repository,
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  const bill = JSON.parse(stdout) as {
    bomFormat: string;
    specVersion: string;
    components: { name: string; version: string; group?: string; purl: string; licenses?: unknown[] }[];
  };
  expect(bill).toMatchObject({ bomFormat: "CycloneDX", specVersion: expect.stringMatching(/^1\.\d$/) });
  const listed = new Set(bill.components.map(({ purl }) => decodeURIComponent(purl)));
  const { dependencies } = read("package.json") as { dependencies: Record<string, string> };
  const expected = Object.entries(dependencies).map(([name, version]) => `pkg:npm/${name}@${version}`);
  expect(expected.filter((purl) => !listed.has(purl))).toEqual([]);
});
