import { createInterface } from "node:readline/promises";
import type { Surroundings } from "./command.ts";

/** Colour where a terminal shows it; NO_COLOR and FORCE_COLOR are what terminal programs agree on. */
function showsColour(): boolean {
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR) return false;
  if (FORCE_COLOR !== undefined) return FORCE_COLOR !== "0";
  return process.stdout.isTTY === true && TERM !== "dumb";
}

async function ask(question: string): Promise<string> {
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  try {
    return (await lines.question(question)).trim();
  } finally {
    lines.close();
  }
}

/** ECMA-48: to the first column, and the line erased. */
const showStatus = (line: string): void => void process.stderr.write(`\r\u001b[K${line}`);

/** A reader that ends early, such as a pager, closes the pipe: that is no fault of ours. */
function quietOnClosedPipe(problem: Error & { code?: string }): void {
  if (problem.code !== "EPIPE") throw problem;
  process.exit();
}

/** The process as its commands see it. */
export function terminal(): Surroundings {
  process.stdout.on("error", quietOnClosedPipe);
  return {
    cwd: process.cwd(),
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(`${text}\n`),
    colour: showsColour(),
    columns: process.stdout.columns ?? 100,
    status: process.stderr.isTTY ? showStatus : undefined,
    ask: process.stdin.isTTY && process.stdout.isTTY ? ask : undefined,
  };
}
