import { writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { counted, reportAsText } from "../../diagnostics/report.ts";
import { csvLine } from "../../pages/data/csv-line.ts";
import { guarded } from "../../pages/data/formula-guard.ts";
import { knownCollection } from "../collection/known-collection.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { type Command, UsageError } from "../command.ts";
import { refuseOutput, requireFolder } from "../writing/place-of-output.ts";
import { itemsTable } from "./items-table.ts";
import { sightingsTable } from "./sightings-table.ts";

export const exportTable: Command = {
  usage: "fittedcase export sightings|items [--root DIR] [--out FILE] [--bom]",
  help: [
    "Writes the sightings, or the items, as CSV (RFC 4180, UTF-8): one row each, in the columns that import",
    "accepts. Importing the export again changes nothing. It is for the owner: nothing is masked or left out.",
    "A cell that a spreadsheet would run as a formula gets an apostrophe in front, which import removes again.",
    "",
    "  --root DIR  the collection's folder (default: the current one)",
    "  --out FILE  where the CSV goes (default: the terminal)",
    "  --bom       begins the file with a byte order mark, by which some spreadsheets recognise UTF-8",
    "",
    "Example: fittedcase export sightings --out log.csv",
    "Exit codes: 0 done; 1 the content has errors, so something would be missing; 2 the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, err }) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        root: { type: "string" },
        out: { type: "string" },
        bom: { type: "boolean", default: false },
      },
    });
    const [kind, ...more] = positionals;
    if ((kind !== "sightings" && kind !== "items") || more.length > 0) {
      const found = positionals.length === 0 ? "nothing" : `"${positionals.join(" ")}"`;
      throw new UsageError(`Found ${found}; expected sightings or items.`);
    }
    const root = rootFolder(cwd, values.root);
    const target = values.out === undefined ? undefined : path.resolve(cwd, values.out);
    if (target !== undefined) {
      requireFolder(target, values.out ?? "");
      refuseOutput(root, target, values.out ?? "");
    }
    const known = knownCollection(root, err);
    if (!known) return 1;
    if (known.errors.length > 0) {
      err(
        `${reportAsText(known.errors, known.read.files.length)}\nNothing was exported: records with errors would be missing.`,
      );
      return 1;
    }
    const { collection } = known;
    const table = kind === "sightings" ? sightingsTable(collection.sightings) : itemsTable(collection);
    const text = `${values.bom ? "\uFEFF" : ""}${table.map((row) => `${csvLine(row.map(guarded))}\r\n`).join("")}`;
    if (target === undefined) {
      // The line's own end is written by whoever prints it.
      out(text.slice(0, -1));
      return 0;
    }
    writeFileSync(target, text);
    out(`Wrote ${counted(table.length - 1, kind.slice(0, -1))} into ${values.out}.`);
    return 0;
  },
};
