import path from "node:path";
import { parseArgs } from "node:util";
import { counted, reportAsText } from "../../diagnostics/report.ts";
import type { Audience } from "../../publication/published.ts";
import { buildSite } from "../../site/build/build-site.ts";
import { defaultOut } from "../../site/folders/out-refusals.ts";
import { ownCode } from "../collection/own-code.ts";
import { rootFolder } from "../collection/root-folder.ts";
import type { Command } from "../command.ts";
import { progressLine } from "../terminal/progress-line.ts";

const namedAtMost = 12;

function goneInWords(gone: readonly string[]): string {
  const more = gone.length - namedAtMost;
  const named = gone.slice(0, namedAtMost).join(", ") + (more > 0 ? ` and ${more} more` : "");
  return (
    `${counted(gone.length, "page")} of the last site no longer ${gone.length === 1 ? "exists" : "exist"}: ${named}. ` +
    'If a record has a new id, list the old one under "formerly": the old address then leads to the new one.'
  );
}

export const build: Command = {
  usage: "fittedcase build [--root DIR] [--out DIR] [--private]",
  help: [
    "Checks the collection, assesses it and writes the whole site. If a build fails or is killed, the last",
    "good site stays as it was.",
    "",
    "  --root DIR   the collection's folder (default: the current one)",
    "  --out DIR    where the site goes (default: _site in the collection's folder)",
    "  --private    the owner's own site, with owners, prices and serials in full (default folder: _private)",
    "",
    "Example: fittedcase build --root my-cases",
    "Exit codes: 0 done; 1 the content has errors; 2 the command is wrong.",
  ].join("\n"),
  async run(args, terminal) {
    const { cwd, out, err } = terminal;
    const { values } = parseArgs({
      args: [...args],
      options: {
        root: { type: "string" },
        out: { type: "string" },
        private: { type: "boolean", default: false },
      },
    });
    const started = performance.now();
    const root = rootFolder(cwd, values.root);
    const audience: Audience = values.private ? "private" : "public";
    const target = values.out === undefined ? defaultOut(root, audience) : path.resolve(cwd, values.out);
    const code = ownCode(root);
    if (code !== null) err(code);
    const progress = progressLine(terminal);
    const { written, diagnostics, filesRead } = await buildSite(
      root,
      target,
      audience,
      progress.onProgress,
    ).finally(progress.clear);
    if (!written) {
      err(`${reportAsText(diagnostics, filesRead)}\nNothing was written.`);
      return 1;
    }
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    const where = path.relative(cwd, target) || ".";
    const { items, pages, rewritten, unchanged, warnings, gone, leftover } = written;
    out(
      `${counted(items, "item")}, ${counted(pages, "page")}; ${counted(rewritten, "file")} written, ${unchanged} unchanged; ` +
        `${counted(warnings, "warning")}; ${seconds} s. ` +
        `The ${audience} site is in ${where}.`,
    );
    if (audience === "private") {
      out("It holds owners, prices and serials in full: it is for you, not for publication.");
    }
    if (gone.length > 0) out(goneInWords(gone));
    for (const { folder, reason } of leftover)
      err(`Left over from an earlier build, for you to remove: ${folder} (${reason}).`);
    return 0;
  },
};
