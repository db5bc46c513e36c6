import { runCommand } from "../../shared/commands/run-command.ts";
import type { Ran } from "./run.ts";

/**
 * The command line in this very process, as it stands in the sources: what a command says and writes, without the second
 * that a new process takes. That the compiled one starts, and ends with its code, is tested by those that use `run`.
 */
export async function runHere(args: readonly string[], cwd: string): Promise<Ran> {
  let out = "";
  let err = "";
  const code = await runCommand(args, {
    cwd,
    out: (text) => {
      out += `${text}\n`;
    },
    err: (text) => {
      err += `${text}\n`;
    },
    colour: false,
    columns: 100,
  });
  return { code, signal: null, out, err };
}
