import { parseArgs } from "node:util";
import { reportAsJson, reportAsText, tally } from "../diagnostics/report.ts";
import { loadCollection } from "../site/load-collection.ts";
import { type Command, UsageError } from "./command.ts";
import { rootFolder } from "./root-folder.ts";

const reporters = { text: reportAsText, json: reportAsJson } as const;

export const check: Command = {
  usage: "fittedcase check [--root DIR] [--format text|json]",
  help: "Reports every problem of a collection at once.",
  async run(args, { cwd, out }) {
    const { values } = parseArgs({
      args: [...args],
      options: { root: { type: "string" }, format: { type: "string", default: "text" } },
    });
    const format = values.format;
    if (!Object.hasOwn(reporters, format)) {
      throw new UsageError(`Found --format "${format}"; expected ${Object.keys(reporters).join(" or ")}.`);
    }
    const { diagnostics, filesRead } = loadCollection(rootFolder(cwd, values.root));
    out(reporters[format as keyof typeof reporters](diagnostics, filesRead));
    return tally(diagnostics).errors > 0 ? 1 : 0;
  },
};
