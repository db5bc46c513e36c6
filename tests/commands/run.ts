import { spawn } from "node:child_process";
import path from "node:path";
import { fileURLToPath } from "node:url";

export const repository = fileURLToPath(new URL("../..", import.meta.url));

/** The file that package.json names as the command, as it is after `npm ci`; or a copy compiled elsewhere. */
export const command =
  process.env.FITTEDCASE_COMMAND ?? path.join(repository, "dist/shared/commands/main.js");

export interface Ran {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

export interface Running {
  readonly done: Promise<Ran>;
  readonly kill: (signal?: NodeJS.Signals) => void;
}

export interface Circumstances {
  /** Whose process it is to be, by number; needs the rights of the superuser. */
  readonly uid?: number | undefined;
  /** What a shell does first, such as setting a limit. */
  readonly limit?: string | undefined;
}

/** Starts the command as a process of its own. */
export function start(
  args: readonly string[],
  cwd: string,
  env: Record<string, string> = {},
  { uid, limit }: Circumstances = {},
): Running {
  const words = [process.execPath, command, ...args];
  const [program = "", ...rest] =
    limit === undefined ? words : ["sh", "-c", `${limit}; exec "$@"`, "sh", ...words];
  const child = spawn(program, rest, {
    cwd,
    env: { ...process.env, NO_COLOR: "1", ...env },
    stdio: ["ignore", "pipe", "pipe"],
    ...(uid === undefined ? {} : { uid }),
  });
  let out = "";
  let err = "";
  child.stdout.on("data", (chunk) => {
    out += chunk;
  });
  child.stderr.on("data", (chunk) => {
    err += chunk;
  });
  return {
    done: new Promise((resolve, reject) => {
      child.on("error", reject);
      child.on("close", (code, signal) => resolve({ code, signal, out, err }));
    }),
    kill: (signal = "SIGKILL") => void child.kill(signal),
  };
}

export const run = (args: readonly string[], cwd: string, env: Record<string, string> = {}): Promise<Ran> =>
  start(args, cwd, env).done;
