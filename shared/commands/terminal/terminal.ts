import { createInterface, type Interface } from "node:readline";
import { type Terminal, UsageError } from "../command.ts";
import { printable } from "./printable-text.ts";

/** Colour where a terminal shows it; NO_COLOR and FORCE_COLOR are what terminal programs agree on. */
function showsColour(): boolean {
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR) return false;
  if (FORCE_COLOR !== undefined) return FORCE_COLOR !== "0";
  return process.stdout.isTTY === true && TERM !== "dumb";
}

/** Asks line by line. What is typed ahead waits for the next question; between questions nothing keeps the process. */
function asker(): (question: string) => Promise<string> {
  let lines: Interface | undefined;
  let answers: AsyncIterator<string> | undefined;
  return async (question) => {
    lines ??= createInterface({ input: process.stdin, output: process.stdout });
    answers ??= lines[Symbol.asyncIterator]();
    lines.setPrompt(question);
    lines.prompt();
    const answer = await answers.next();
    if (answer.done) throw new UsageError("The question was not answered. Nothing was done.");
    lines.pause();
    return answer.value.trim();
  };
}

/** ECMA-48: to the first column, and the line erased. */
const showStatus = (line: string): void => void process.stderr.write(`\r\u001b[K${line}`);

/** A reader that ends early, such as a pager, closes the pipe: that is no fault of ours. */
function quietOnClosedPipe(problem: Error & { code?: string }): void {
  if (problem.code !== "EPIPE") throw problem;
  process.exit();
}

/** A file or another program gets every byte. */
const forStream = (stream: NodeJS.WriteStream, text: string): string =>
  stream.isTTY ? printable(text) : text;

/** The process as its commands see it. */
export function processTerminal(): Terminal {
  process.stdout.on("error", quietOnClosedPipe);
  return {
    cwd: process.cwd(),
    out: (text) => void process.stdout.write(`${forStream(process.stdout, text)}\n`),
    err: (text) => void process.stderr.write(`${forStream(process.stderr, text)}\n`),
    colour: showsColour(),
    columns: process.stdout.columns ?? 100,
    status: process.stderr.isTTY ? showStatus : undefined,
    ask: process.stdin.isTTY && process.stdout.isTTY ? asker() : undefined,
  };
}
