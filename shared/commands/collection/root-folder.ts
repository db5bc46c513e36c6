import { statSync } from "node:fs";
import path from "node:path";
import { UsageError } from "../command.ts";

/** The collection's folder, which must be there. */
export function rootFolder(cwd: string, root: string | undefined): string {
  const folder = path.resolve(cwd, root ?? ".");
  const stat = statSync(folder, { throwIfNoEntry: false });
  if (!stat) throw new UsageError(`Found no folder "${root ?? "."}"; expected the folder of a collection.`);
  if (!stat.isDirectory())
    throw new UsageError(`Found a file, "${root}"; expected the folder of a collection.`);
  return folder;
}
