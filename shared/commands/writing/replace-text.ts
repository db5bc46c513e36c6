import {
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import path from "node:path";
import { staysInside } from "../../source/text-file.ts";

/**
 * Puts a new text into a record's file, unless the file is no longer what it was taken for. Written beside it and renamed
 * over it, so that nobody ever reads half of it, and nothing is lost where the power goes; its mode and its byte order
 * mark stay. Texts are without that mark.
 */
export function replaceText(
  root: string,
  file: string,
  isAsTaken: (text: string) => boolean,
  text: string,
): boolean {
  const full = realpathSync(path.join(root, file));
  if (!staysInside(root, full)) return false;
  const { mode } = statSync(full);
  const aside = path.join(path.dirname(full), `.${path.basename(full)}.${process.pid}.new`);
  const written = () => readFileSync(full, "utf8");
  try {
    const descriptor = openSync(aside, "wx", mode);
    try {
      writeSync(descriptor, (written().startsWith("\uFEFF") ? "\uFEFF" : "") + text);
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    if (!isAsTaken(written().replace(/^\uFEFF/, ""))) return false;
    renameSync(aside, full);
    return true;
  } finally {
    rmSync(aside, { force: true });
  }
}
