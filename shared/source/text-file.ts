import { isUtf8 } from "node:buffer";
import { readFileSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { locusBetween, startOf } from "../diagnostics/place.ts";
import { isWithin } from "./within.ts";

const megabyte = 1024 * 1024;

/** No record written by hand comes near; a log of 100,000 sightings is about 10 MB. */
const largest = { record: 4 * megabyte, log: 256 * megabyte } as const;

export type TextResult =
  | { readonly text: string; readonly diagnostics: readonly [] }
  | { readonly text: null; readonly diagnostics: readonly Diagnostic[] };

/** True where a path, with every link followed, stays inside the folder. */
export const staysInside = (folder: string, target: string): boolean =>
  isWithin(realpathSync(folder), realpathSync(target));

/** `isLinked` is false where no link lies on the way: then there is nothing to follow. */
export function readTextFile(
  root: string,
  file: string,
  size: keyof typeof largest = "record",
  isLinked = true,
): TextResult {
  const full = path.join(root, file);
  const refuse = (diagnostic: Diagnostic): TextResult => ({ text: null, diagnostics: [diagnostic] });
  let bytes: Buffer;
  try {
    if (isLinked && !staysInside(root, full)) {
      return refuse(
        diagnose("outside-root", startOf(file), {
          found: "a link that leads out of the collection",
          expected: "a file inside its folder",
          remedy: "Copy the file into the folder.",
        }),
      );
    }
    const stat = statSync(full);
    // Asked before it is opened: to open a pipe is to wait for it.
    if (!stat.isFile()) {
      return refuse(
        diagnose("unreadable-file", startOf(file), {
          found: "a pipe, socket or device",
          expected: "an ordinary file",
        }),
      );
    }
    const { size: found } = stat;
    if (found > largest[size]) {
      return refuse(
        diagnose("file-too-large", startOf(file), {
          found: `${(found / megabyte).toFixed(1)} MB`,
          expected: `at most ${largest[size] / megabyte} MB of text`,
        }),
      );
    }
    bytes = readFileSync(full);
  } catch (problem) {
    return refuse(
      diagnose("unreadable-file", startOf(file), {
        found: `a file that cannot be read (${problem instanceof Error && "code" in problem ? problem.code : "unknown reason"})`,
        expected: "a file that can be read",
      }),
    );
  }
  return decode(file, bytes);
}

function decode(file: string, bytes: Buffer): TextResult {
  const wrong = (text: string, at: number, found: string): TextResult => ({
    text: null,
    diagnostics: [
      diagnose("not-text", locusBetween(file, text, at, at + 1), {
        found,
        expected: "text in UTF-8",
        remedy: "Save the file as UTF-8 text.",
      }),
    ],
  });
  const text = bytes.toString("utf8").replace(/^\uFEFF/, "");
  const nul = text.indexOf("\0");
  if (nul >= 0) return wrong(text, nul, "a NUL byte, as in a binary file or UTF-16");
  // A replacement character that the file does not spell out itself marks bytes that are not UTF-8.
  const replaced = text.indexOf("\uFFFD");
  if (replaced >= 0 && !isUtf8(bytes)) return wrong(text, replaced, "bytes that are not UTF-8");
  return { text, diagnostics: [] };
}
