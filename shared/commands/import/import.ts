import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { reportAsText } from "../../diagnostics/report.ts";
import { staysInside } from "../../source/text-file.ts";
import { knownCollection } from "../collection/known-collection.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { type Command, type ExitCode, type Terminal, UsageError } from "../command.ts";
import { beside } from "./beside.ts";
import { type CheckedSheet, checkedSheet, type Job, proposeMap } from "./checked-sheet.ts";
import { alikeLines, counted, previewLines, reasonLines, tallyRows, twinLines } from "./import-report.ts";
import { writeRejected } from "./rejected-file.ts";
import { rejectedText } from "./rejected-text.ts";
import { SheetError } from "./sheet.ts";
import { writeRows } from "./write-rows.ts";

const largest = 256 * 1024 * 1024;

/** The spreadsheet's bytes; a usage error where there is no such file, or it is part of the collection already. */
function readBytes(root: string, full: string, shown: string): Buffer {
  const stat = statSync(full, { throwIfNoEntry: false });
  if (!stat?.isFile()) throw new UsageError(`Found no file "${shown}"; expected a spreadsheet saved as CSV.`);
  for (const own of ["content", "schemas"]) {
    const folder = path.join(root, own);
    if (existsSync(folder) && staysInside(folder, full)) {
      throw new UsageError(
        `Found "${shown}" in the collection's own ${own}/; expected a spreadsheet from outside it.`,
      );
    }
  }
  if (stat.size > largest) {
    throw new UsageError(`Found a file of ${Math.round(stat.size / 1e6)} MB; expected at most 256.`);
  }
  return readFileSync(full);
}

/** A name as it must be typed after a command. */
const quoted = (name: string) => (/^[\w./-]+$/.test(name) ? name : `"${name}"`);

function resultLines({ rows }: CheckedSheet, would: boolean): string[] {
  const { fresh, known, rejected } = tallyRows(rows);
  const parts = [
    `${counted(fresh, "row")} ${would ? "can be brought in" : "brought in"}`,
    `${counted(known, "row")} already there`,
    `${counted(rejected, "row")} ${would ? "would be rejected" : "rejected"}`,
  ];
  return [`${parts.join("; ")}.`, ...twinLines(rows), ...alikeLines(rows), ...reasonLines(rows)];
}

/**
 * Proposes a map, or takes the one that is there, and shows what would come of it. A spreadsheet that has our own
 * headings needs no map: there is nothing to correct in one.
 */
function withoutMap(job: Job, rootFlag: string, terminal: Terminal): ExitCode {
  const { out } = terminal;
  const proposed = existsSync(job.mapPath) ? undefined : proposeMap(job);
  if (proposed?.certain) {
    if (proposed.dateOfTheirs !== undefined)
      out(
        `Dates such as "${proposed.dateOfTheirs}" are read as people write them: each has only one reading.`,
      );
    return bringIn(job, proposed.text, terminal);
  }
  const there = proposed === undefined;
  const text = proposed?.text ?? readFileSync(job.mapPath, "utf8");
  const sheet = checkedSheet(job, text);
  out(
    [...sheet.about, "", "The first rows, as they would be read:", ...previewLines(sheet.rows), ""].join(
      "\n",
    ),
  );
  out(resultLines(sheet, true).join("\n"));
  if (!there && !job.dryRun) writeFileSync(job.mapPath, text, { flag: "wx" });
  const command = `  fittedcase import ${job.kind} ${quoted(job.file)}`;
  if (!there && job.dryRun) {
    out("\nNothing was written. To write the map of the columns, for you to correct, run:");
    out(`${command}${rootFlag}`);
    return 0;
  }
  const wrote = there
    ? `The map ${job.mapFile} already exists; it was used and left as it is.`
    : `Wrote ${job.mapFile}, which says how each column is read.`;
  out(`\n${wrote} Nothing was brought in yet. Check the map, correct it where needed, and then run:`);
  out(`${command} --map ${quoted(job.mapFile)}${rootFlag}`);
  return 0;
}

function withMap(job: Job, terminal: Terminal): ExitCode {
  if (!existsSync(job.mapPath)) {
    throw new UsageError(`Found no file "${job.mapFile}"; expected a map. Without --map, one is proposed.`);
  }
  return bringIn(job, readFileSync(job.mapPath, "utf8"), terminal);
}

function bringIn(job: Job, mapText: string, { out, err, cwd }: Terminal): ExitCode {
  const sheet = checkedSheet(job, mapText);
  out(sheet.about.join("\n"));
  const { rejected } = tallyRows(sheet.rows);
  const code = rejected > 0 ? 1 : 0;
  if (job.dryRun) {
    out(`${resultLines(sheet, true).join("\n")}\nNothing was written.`);
    return code;
  }
  const { file, left } = writeRejected(job.root, cwd, job.file, rejected > 0 ? rejectedText(sheet) : null);
  for (const written of writeRows(job.root, job.file, sheet)) out(`Wrote ${written}.`);
  out(resultLines(sheet, false).join("\n"));
  if (file !== null) err(`${counted(rejected, "row")} went into ${file}, each with its reason.`);
  for (const changed of left) err(`${changed} has been changed since it was written, and was left as it is.`);
  return code;
}

export const importTable: Command = {
  usage: "fittedcase import sightings|items FILE.csv [--map MAP.yaml] [--root DIR] [--dry-run]",
  help: [
    "Brings in a spreadsheet saved as CSV, as it is: commas, semicolons or tabs; UTF-8, UTF-16 or Windows-1252;",
    "titles above the headings, merged and repeated headings, empty rows; dates and numbers as people write them.",
    "",
    "Without --map it proposes how to read the columns, writes that to FILE.map.yaml beside the spreadsheet for you",
    "to correct, and shows what would come of it. Nothing is brought in yet. A file whose headings are all our own",
    "names of the fields, such as an export, needs no map: its rows are brought in at once, unless a date or an amount",
    "has two readings (3/5/1998), or a year two digits; the map then asks for the one word that settles it.",
    "With --map it brings the rows in: sightings into content/sightings/, items into content/items/. A row that is",
    "already there is left alone, so importing again adds nothing twice. A row that check would refuse, or that can",
    "be read in two ways, goes into FILE.rejected.csv with the reason; correct it there and import that file.",
    "A file that you have changed is never overwritten: rows that are rejected later go into FILE.rejected-2.csv.",
    "In a column for a single part, a count below what was issued leaves the remaining units unexamined.",
    "",
    "  --map MAP.yaml  the map of the columns",
    "  --root DIR      the collection's folder (default: the current one)",
    "  --dry-run       shows what would be done, and writes nothing",
    "",
    'Example: fittedcase import sightings "old list.csv"',
    '         fittedcase import sightings "old list.csv" --map "old list.map.yaml"',
    "Exit codes: 0 done; 1 rows were rejected; 2 the command or the map is wrong.",
  ].join("\n"),
  async run(args, terminal) {
    const { cwd, err } = terminal;
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        map: { type: "string" },
        root: { type: "string" },
        "dry-run": { type: "boolean", default: false },
      },
    });
    const [kind, file, ...more] = positionals;
    if (kind !== "sightings" && kind !== "items") {
      throw new UsageError(
        `Found ${kind === undefined ? "nothing" : `"${kind}"`}; expected sightings or items.`,
      );
    }
    if (file === undefined || more.length > 0) {
      throw new UsageError(`Found ${positionals.length - 1} files; expected one.`);
    }
    const root = rootFolder(cwd, values.root);
    const bytes = readBytes(root, path.resolve(cwd, file), file);
    const known = knownCollection(root, err);
    if (!known) return 1;
    // Errors of the other kind of record have no bearing on these rows.
    const others = kind === "sightings" ? "content/items/" : "content/sightings/";
    const broken = known.errors.filter((error) => !error.file.startsWith(others));
    if (broken.length > 0) {
      err(`${reportAsText(broken, known.read.files.length)}\nNothing was brought in: correct these first.`);
      return 1;
    }
    const mapFile = values.map ?? beside(file, ".map.yaml");
    const mapPath = path.resolve(cwd, mapFile);
    const job: Job = { kind, file, root, bytes, known, mapFile, mapPath, dryRun: values["dry-run"] };
    const rootFlag = values.root === undefined ? "" : ` --root ${quoted(values.root)}`;
    try {
      return values.map === undefined ? withoutMap(job, rootFlag, terminal) : withMap(job, terminal);
    } catch (problem) {
      if (!(problem instanceof SheetError)) throw problem;
      err(`${file}: ${problem.message}\nNothing was brought in.`);
      return 1;
    }
  },
};
