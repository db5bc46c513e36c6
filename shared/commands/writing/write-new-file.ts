import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { staysInside } from "../../source/text-file.ts";
import { UsageError } from "../command.ts";

/** Writes a file that is not there yet, and never over one that is. */
export function writeNewFile(root: string, file: string, text: string): void {
  const full = path.join(root, file);
  mkdirSync(path.dirname(full), { recursive: true });
  if (!staysInside(root, path.dirname(full))) {
    throw new UsageError(
      `Found a link that leads "${file}" out of the collection; expected a folder inside it.`,
    );
  }
  try {
    writeFileSync(full, text, { flag: "wx" });
  } catch (problem) {
    if (!(problem instanceof Error && "code" in problem && problem.code === "EEXIST")) throw problem;
    throw new UsageError(`Found "${file}", which already exists; it was left as it is.`);
  }
}
