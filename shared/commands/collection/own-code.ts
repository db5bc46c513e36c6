import { realpathSync } from "node:fs";
import path from "node:path";
import { filesBelow } from "../../site/files-below.ts";
import { packageFolder } from "../../source/package-folder.ts";

/** Which code a collection brings along, for whoever builds what is not theirs; null where it brings none. */
export function ownCode(root: string): string | null {
  // Where the collection is the tool's own repository, it is the tool's own.
  if (realpathSync(root) === realpathSync(packageFolder)) return null;
  const files = filesBelow(path.join(root, "templates")).filter((file) => /\.[cm]?js$/.test(file));
  if (files.length === 0) return null;
  const names = files.map((file) => path.relative(root, file).split(path.sep).join("/"));
  return `This collection contains code, which is run: ${names.join(", ")}.`;
}
