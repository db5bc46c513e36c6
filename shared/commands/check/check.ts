import { parseArgs } from "node:util";
import { dayNumber } from "../../dates/day-number.ts";
import { type Diagnostic, inReadingOrder, isError } from "../../diagnostics/diagnostic.ts";
import { reportAsJson, reportAsText, tally } from "../../diagnostics/report.ts";
import { checkCollection } from "../../site/checks/check-collection.ts";
import { momentsAfterEnd } from "../../site/checks/moments-after-end.ts";
import { unshowableFiles } from "../../site/checks/unshowable-files.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { type Command, UsageError } from "../command.ts";
import { today } from "../today.ts";
import { mendFiles } from "./mend-files.ts";
import { reportAsSarif } from "./sarif.ts";

const formats = ["text", "json", "sarif"] as const;

/** A variant that is named rightly at last shows which of its parts are not: so again, but not for ever. */
const mostRounds = 5;

export const check: Command = {
  usage: "fittedcase check [--root DIR] [--format text|json|sarif] [--all] [--fix]",
  help: [
    "Reports every problem in a collection at once: where it is, what was found, what was expected, and how to correct",
    "it. Errors keep the site from being built; warnings are for you to judge. Only the beginning of photographs and",
    "recordings is read; one that breaks off, or is damaged further on, is found by build.",
    "",
    "  --root DIR      the collection's folder (default: the current one)",
    "  --format FORMAT text for people; json; sarif for editors and build servers (SARIF 2.1.0)",
    "  --all           every problem as text, where otherwise the first 500 are shown and the rest are counted; json",
    "                  and sarif always hold every one",
    "  --fix           first fixes what needs no judgement: a misspelt field, part, value or id with exactly one",
    "                  similar name, and tabs that indent YAML. The rest of each file stays as it is, byte for byte.",
    "",
    "Example: fittedcase check --root my-cases --fix",
    "Exit codes: 0 done; 1 the content has errors; 2 the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, err }) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        root: { type: "string" },
        format: { type: "string", default: "text" },
        all: { type: "boolean", default: false },
        fix: { type: "boolean", default: false },
      },
    });
    const format = formats.find((each) => each === values.format);
    if (!format) {
      throw new UsageError(`Found --format "${values.format}"; expected ${formats.join(" or ")}.`);
    }
    const root = rootFolder(cwd, values.root);
    const { year, month, day } = today();
    // With a day to spare, for what was written where the day begins earlier.
    const lastDay = dayNumber(year, month, day) + 1;
    let loaded = checkCollection(root, lastDay);
    if (values.fix) {
      const mended: string[] = [];
      for (let round = 0; round < mostRounds; round++) {
        const done = mendFiles(root, loaded.diagnostics);
        if (done.length === 0) break;
        mended.push(...done);
        loaded = checkCollection(root, lastDay);
      }
      const told =
        mended.length === 0 ? "Nothing to fix." : `Fixed:\n${mended.map((line) => `  ${line}`).join("\n")}\n`;
      // What is for a program to read holds nothing else.
      (format === "text" ? out : err)(told);
    }
    const { asRead, filesRead } = loaded;
    const beside = [
      ...(await unshowableFiles(root, asRead)),
      ...(await momentsAfterEnd(root, asRead.items.values())),
    ];
    // A file that is not there is told of already.
    const placeOf = ({ file, line, column }: Diagnostic) => `${file}:${line}:${column}`;
    const told = new Set(beside.length === 0 ? [] : loaded.diagnostics.filter(isError).map(placeOf));
    const diagnostics = inReadingOrder([
      ...loaded.diagnostics,
      ...beside.filter((each) => !told.has(placeOf(each))),
    ]);
    if (format === "text")
      out(reportAsText(diagnostics, filesRead, values.all ? Number.POSITIVE_INFINITY : undefined));
    else out((format === "json" ? reportAsJson : reportAsSarif)(diagnostics, filesRead));
    return tally(diagnostics).errors > 0 ? 1 : 0;
  },
};
