import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { digest } from "../../site/digest.ts";
import { cacheFolder } from "../../site/folders/cache-folder.ts";
import { beside } from "./beside.ts";

interface Rejected {
  /** Where the rows went; null where none were rejected. */
  readonly file: string | null;
  /** Files of earlier runs that somebody has changed since; they stay as they are. */
  readonly left: readonly string[];
}

/**
 * Writes rejected rows beside their spreadsheet. What an earlier run rejected would now be misleading and goes, but only
 * where it is as that run left it: a file that somebody is correcting stays, and the rows go under another name.
 */
export function writeRejected(root: string, cwd: string, spreadsheet: string, text: string | null): Rejected {
  const marks = path.join(cacheFolder(root), "rejected");
  const markOf = (written: string) => path.join(marks, digest(written));
  const stem = beside(spreadsheet, ".rejected");
  const full = (file: string) => path.resolve(cwd, file);
  const left: string[] = [];
  for (const file of writtenBefore(stem, path.dirname(full(stem)))) {
    const written = readFileSync(full(file), "utf8");
    if (existsSync(markOf(written))) rmSync(full(file));
    else left.push(file);
  }
  if (text === null) return { file: null, left };
  let file = `${stem}.csv`;
  for (let count = 2; existsSync(full(file)); count++) file = `${stem}-${count}.csv`;
  mkdirSync(marks, { recursive: true });
  writeFileSync(markOf(text), "");
  writeFileSync(full(file), text, { flag: "wx" });
  return { file, left };
}

function writtenBefore(stem: string, folder: string): string[] {
  const name = path.basename(stem);
  return readdirSync(folder).flatMap((each) => {
    const ending = each.startsWith(name) ? each.slice(name.length) : "";
    return /^(?:-\d+)?\.csv$/.test(ending) ? `${stem}${ending}` : [];
  });
}
