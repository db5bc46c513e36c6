#!/usr/bin/env node
import { runCommand } from "./run-command.ts";
import { processTerminal } from "./terminal/terminal.ts";

const terminal = processTerminal();

// A fault of the program's own is no error of the content, by which a process ends that does not say otherwise.
process.on("uncaughtException", (fault) => {
  terminal.err(`Fittedcase itself failed.\n${fault instanceof Error ? fault.stack : String(fault)}`);
  process.exit(2);
});

process.exitCode = await runCommand(process.argv.slice(2), terminal);
