import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { siteFiles } from "../collections/site-files.ts";
import { command, repository } from "../commands/run.ts";
import { generateCollection } from "./generate-collection.ts";

interface Used {
  /** Seconds of processor time, of all threads. */
  readonly cpu: number;
  readonly wall: number;
  /** Peak, in megabytes. */
  readonly memory: number;
}

function use(script: string, args: readonly string[], scratch: string): Used {
  const report = path.join(scratch, "used.json");
  const hook = pathToFileURL(path.join(repository, "tests/benchmarks/used-at-exit.mjs")).href;
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ["--import", hook, script, ...args], {
    env: { ...process.env, USED_AT_EXIT: report },
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`${path.basename(script)} failed.\n${stderr}`);
  return {
    wall: (performance.now() - started) / 1000,
    ...(JSON.parse(readFileSync(report, "utf8")) as Omit<Used, "wall">),
  };
}

const ratio = (a: number, b: number) => (a / b).toFixed(2);

/** A whole build against the plain-Node limit, in one run on one machine: only the ratios mean anything elsewhere. */
export function benchmarkBuild(items: number, print: (line: string) => void): void {
  const scratch = mkdtempSync(path.join(tmpdir(), "bench-build-"));
  try {
    const root = path.join(scratch, "collection");
    generateCollection({ folder: root, items });
    const out = path.join(scratch, "site");
    const build = use(command, ["build", "--root", root, "--out", out], scratch);
    const site = siteFiles(out);
    const bytes = [...site.values()].reduce((sum, file) => sum + file.length, 0);
    const plain = path.join(repository, "tests/benchmarks/plain-limit.mjs");
    const limit = use(plain, [root, path.join(scratch, "plain"), String(site.size), String(bytes)], scratch);
    print(`build of ${items} items: ${site.size} files, ${(bytes / 1e6).toFixed(1)} MB`);
    print(
      `  processor  ${ratio(build.cpu, limit.cpu)} × limit (${build.cpu.toFixed(1)} s against ${limit.cpu.toFixed(1)} s)`,
    );
    print(`  wall       ${ratio(build.wall, limit.wall)} × limit`);
    print(`  memory     ${build.memory.toFixed(0)} MB at the peak (limit ${limit.memory.toFixed(0)} MB)`);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
