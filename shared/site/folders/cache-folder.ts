import { accessSync, constants, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { OutFolderError, refuseLinked } from "./out-refusals.ts";

const known = new Map<string, string>();

/**
 * Where a collection's cache lies: beside it, or, where nobody may write there, in a folder that is this process's own and
 * goes with it. Whatever lies in it may be deleted at any time.
 */
export function cacheFolder(root: string): string {
  const folder = known.get(root) ?? besideCollection(root) ?? goneAtExit();
  known.set(root, folder);
  return folder;
}

/** What a thread is told: it has the cache of its process, whose end takes it away. */
export const useCacheFolder = (root: string, folder: string): void => {
  known.set(root, folder);
};

function besideCollection(root: string): string | null {
  const folder = path.join(root, ".cache/fittedcase");
  try {
    refuseLinks(folder);
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK);
    return folder;
  } catch (problem) {
    if (problem instanceof OutFolderError) throw problem;
    return null;
  }
}

/** What lies in the cache is written over and swept up; behind a link that would be what is somebody else's. */
function refuseLinks(cache: string): void {
  const kinds = [cache, path.join(cache, "site"), path.join(cache, "standing")];
  for (const folder of [path.dirname(cache), cache, ...kinds.flatMap(linksIn)])
    refuseLinked(folder, "builds keep what the next one needs");
}

const linksIn = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
        entry.isSymbolicLink() ? path.join(folder, entry.name) : [],
      )
    : [];

function goneAtExit(): string {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-cache-"));
  process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
