import { spawn } from "node:child_process";
import { setPriority } from "node:os";
import path from "node:path";
import { packageFolder } from "../../source/package-folder.ts";
import { ownCode } from "../collection/own-code.ts";

export interface BackgroundBuild {
  /** What was wrong with the content, as `build` reports it; null where the site was written, undefined if it was stopped. */
  readonly problems: Promise<string | null | undefined>;
  readonly stop: () => void;
}

/** Builds the site in a process of its own, which gives way to everything else: the preview goes on answering. */
export function buildInBackground(root: string, out: string): BackgroundBuild {
  const main = path.join(packageFolder, "dist/shared/commands/main.js");
  const child = spawn(process.execPath, [main, "build", "--root", root, "--out", out], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  try {
    if (child.pid !== undefined) setPriority(child.pid, 5);
  } catch {
    // It has ended already, or the system knows no priorities.
  }
  // What whoever started the preview has been told is no problem.
  const code = ownCode(root);
  const named = code === null ? "" : `${code}\n`;
  let said = "";
  child.stderr.on("data", (chunk: unknown) => {
    said += String(chunk);
  });
  let isStopped = false;
  return {
    problems: new Promise((resolve) => {
      child.on("error", (problem) => resolve(problem.message));
      child.on("close", (code) => {
        if (isStopped) resolve(undefined);
        else resolve(code === 0 ? null : said.replace(named, "").replace(/\n*Nothing was written\.\n*$/, ""));
      });
    }),
    stop() {
      isStopped = true;
      child.kill("SIGTERM");
    },
  };
}
