import { nearestName, suggestion } from "../diagnostics/nearest-name.ts";
import { OutFolderError } from "../site/folders/out-refusals.ts";
import { TemplateError } from "../site/overrides/template-error.ts";
import { packageVersion } from "../source/package-folder.ts";
import { type Command, type ExitCode, type Terminal, UsageError } from "./command.ts";

interface Entry {
  readonly summary: string;
  /** Each command is read only when it is asked for: some bring a whole site engine along. */
  readonly load: () => Promise<Command>;
}

const commands: Readonly<Record<string, Entry>> = {
  init: {
    summary: "starts a collection of your own, ready to build",
    load: async () => (await import("./init/init.ts")).init,
  },
  new: {
    summary: "writes the file of a new item, variant, family or article, for you to fill in",
    load: async () => (await import("./new/new.ts")).newRecord,
  },
  import: {
    summary: "brings in a spreadsheet of sightings or items",
    load: async () => (await import("./import/import.ts")).importTable,
  },
  export: {
    summary: "writes the sightings or the items as CSV",
    load: async () => (await import("./export/export.ts")).exportTable,
  },
  check: {
    summary: "reports every problem in a collection, and can fix simple slips",
    load: async () => (await import("./check/check.ts")).check,
  },
  explain: {
    summary: "shows what is known of an item, each figure with its method and inputs",
    load: async () => (await import("./explain/explain.ts")).explain,
  },
  checklist: {
    summary: "writes a sheet to print and tick at the bench",
    load: async () => (await import("./checklist/checklist.ts")).checklist,
  },
  schemas: {
    summary: "writes JSON Schemas of your collection for an editor",
    load: async () => (await import("./schemas/schemas.ts")).schemas,
  },
  serve: {
    summary: "shows the site while you write, and reloads it when something changes",
    load: async () => (await import("./serve/serve.ts")).serve,
  },
  build: {
    summary: "checks and assesses the collection, and writes the whole site",
    load: async () => (await import("./build/build.ts")).build,
  },
};

const help = (): string =>
  [
    "Fittedcase builds a catalogue of cased outfits from a folder of Markdown files.",
    "",
    ...Object.entries(commands).map(([name, { summary }]) => `  fittedcase ${name.padEnd(10)} ${summary}`),
    "",
    "  For more about a command: fittedcase COMMAND --help",
  ].join("\n");

/** Errors of `parseArgs` are about what the user typed, and those of a folder about where it is to be written. */
const isUsage = (problem: unknown): problem is Error =>
  problem instanceof UsageError ||
  problem instanceof OutFolderError ||
  (problem instanceof TypeError && "code" in problem && String(problem.code).startsWith("ERR_PARSE_ARGS"));

/**
 * What the machine refuses (no permission, no space, no such folder) is not a fault of the program either, nor is what a
 * template of the user's own does. Eleventy wraps both in errors of its own, once or more.
 */
function noFaultOfOurs(problem: unknown): string | null {
  if (!(problem instanceof Error)) return null;
  if (problem instanceof TemplateError) return problem.message;
  if ("syscall" in problem) return `The system refused: ${problem.message}.`;
  return noFaultOfOurs("originalError" in problem ? problem.originalError : problem.cause);
}

/** What is wrong with how a command was typed: of a flag that it does not have, also which may have been meant. */
function toldOf(problem: Error, { usage, help: text }: Command): string {
  const [, typed] = /^Unknown option '--([^']+)'/.exec(problem.message) ?? [];
  if (typed === undefined) return problem.message;
  // The help of a command names all of its flags.
  const flags = [...`${usage} ${text}`.matchAll(/--([a-z][a-z-]*)/g)].map(([, flag = ""]) => flag);
  const meant = nearestName(typed, flags);
  const hint = meant === undefined ? "" : ` Did you mean "--${meant}"?`;
  return `Found "--${typed}"; expected a flag of this command.${hint}`;
}

/** One call of the command line, wherever it comes from. */
export async function runCommand(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === undefined || name === "--help" || name === "-h" || name === "help") {
    terminal.out(help());
    return name === undefined ? 2 : 0;
  }
  if (name === "--version") {
    terminal.out(packageVersion);
    return 0;
  }
  const entry = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!entry) {
    const hint = suggestion(name, Object.keys(commands)) ?? "";
    terminal.err(`Found "${name}"; expected a command. ${hint}`.trimEnd());
    return 2;
  }
  const command = await entry.load();
  if (rest.includes("--help") || rest.includes("-h")) {
    terminal.out(`Usage: ${command.usage}\n\n${command.help}`);
    return 0;
  }
  try {
    return await command.run(rest, terminal);
  } catch (problem) {
    const told = noFaultOfOurs(problem);
    if (told !== null) {
      terminal.err(told);
      return 2;
    }
    if (!isUsage(problem)) throw problem;
    terminal.err(`${toldOf(problem, command)}\nUsage: ${command.usage}`);
    return 2;
  }
}
