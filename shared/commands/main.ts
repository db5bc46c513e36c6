#!/usr/bin/env node
import { suggestion } from "../diagnostics/nearest-name.ts";
import { packageVersion } from "../source/package-folder.ts";

import { build } from "./build.ts";
import { check } from "./check.ts";
import { type Command, type ExitCode, type Surroundings, UsageError } from "./command.ts";

const commands: Readonly<Record<string, Command>> = { build, check };

const help = (): string =>
  [
    "Fittedcase builds a catalogue of cased outfits from a folder of Markdown files.",
    "",
    ...Object.entries(commands).map(([name, { summary }]) => `  fittedcase ${name.padEnd(10)} ${summary}`),
    "",
    "  fittedcase COMMAND --help tells more of one.",
  ].join("\n");

/** Errors of `parseArgs` are about what the user typed. */
const isUsage = (problem: unknown): problem is Error =>
  problem instanceof UsageError ||
  (problem instanceof TypeError && "code" in problem && String(problem.code).startsWith("ERR_PARSE_ARGS"));

async function main(args: readonly string[], surroundings: Surroundings): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === undefined || name === "--help" || name === "help") {
    surroundings.out(help());
    return name === undefined ? 2 : 0;
  }
  if (name === "--version") {
    surroundings.out(packageVersion);
    return 0;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!command) {
    const hint = suggestion(name, Object.keys(commands)) ?? "";
    surroundings.err(`Found "${name}"; expected a command. ${hint}`.trimEnd());
    return 2;
  }
  if (rest.includes("--help")) {
    surroundings.out(`${command.usage}\n\n${command.summary}`);
    return 0;
  }
  try {
    return await command.run(rest, surroundings);
  } catch (problem) {
    if (!isUsage(problem)) throw problem;
    surroundings.err(`${problem.message}\nUsage: ${command.usage}`);
    return 2;
  }
}

process.exitCode = await main(process.argv.slice(2), {
  cwd: process.cwd(),
  out: (text) => void process.stdout.write(`${text}\n`),
  err: (text) => void process.stderr.write(`${text}\n`),
});
