import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, renameSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { repository } from "../commands/run.ts";

const quiet = { encoding: "utf8", stdio: "pipe" } as const;

/**
 * An empty project with the package in it as `npm pack` makes it, and beside it what package.json says it needs and
 * nothing else: so that a test sees what a stranger gets, without a network.
 */
export function installedPackage(): string {
  const project = mkdtempSync(path.join(tmpdir(), "fittedcase-package-"));
  const at = (...names: string[]) => path.join(project, ...names);
  writeFileSync(at("package.json"), JSON.stringify({ name: "empty", private: true, type: "module" }));
  const needed = execFileSync("npm", ["ls", "--omit=dev", "--all", "--parseable"], {
    ...quiet,
    cwd: repository,
  });
  for (const folder of needed.trim().split("\n")) {
    const relative = path.relative(repository, folder);
    if (relative === "" || existsSync(at(relative))) continue;
    mkdirSync(path.dirname(at(relative)), { recursive: true });
    cpSync(folder, at(relative), { recursive: true, verbatimSymlinks: true });
  }
  // Compiled by whoever runs the tests; to compile it here would take what is developed with.
  execFileSync("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", project], {
    ...quiet,
    cwd: repository,
  });
  execFileSync("tar", ["-xzf", "fittedcase-0.1.0.tgz"], { cwd: project });
  renameSync(at("package"), at("node_modules/fittedcase"));
  // Links the commands, as an installation does.
  execFileSync("npm", ["rebuild", "--ignore-scripts", "--offline", "fittedcase", "@11ty/eleventy"], {
    ...quiet,
    cwd: project,
  });
  return project;
}

/** What `npx fittedcase …` prints there. */
export const npx = (project: string, ...args: string[]): string =>
  execFileSync("npx", ["--offline", "--no", "--", ...args], {
    ...quiet,
    cwd: project,
    env: { ...process.env, NO_COLOR: "1" },
  });
