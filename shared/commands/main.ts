#!/usr/bin/env node
import { runCommand } from "./run-command.ts";
import { terminal } from "./terminal.ts";

process.exitCode = await runCommand(process.argv.slice(2), terminal());
