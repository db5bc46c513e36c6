import { type FSWatcher, readdirSync, watch } from "node:fs";
import path from "node:path";

/** Every folder below one, itself included; none where there is none. */
function foldersIn(folder: string): string[] {
  try {
    const below = readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !entry.name.startsWith("."))
      .flatMap((entry) => foldersIn(path.join(folder, entry.name)));
    return [folder, ...below];
  } catch {
    return [];
  }
}

/**
 * Tells of every change in some folders, and ends when the returned function is called. Each folder is watched by
 * itself: a recursive watch of Node 20 on Linux follows a file and not its name, and so loses whatever an editor
 * saves by renaming a new file over the old one.
 */
export function watchFolders(folders: readonly string[], onChange: () => void): () => void {
  const watchers = new Map<string, FSWatcher>();
  const forget = (folder: string) => {
    watchers.get(folder)?.close();
    watchers.delete(folder);
  };
  const follow = () => {
    const there = new Set(folders.flatMap(foldersIn));
    for (const folder of watchers.keys()) if (!there.has(folder)) forget(folder);
    for (const folder of there) {
      if (watchers.has(folder)) continue;
      const watcher = watch(folder, () => {
        follow();
        onChange();
      });
      watcher.on("error", () => forget(folder));
      watchers.set(folder, watcher);
    }
  };
  follow();
  return () => {
    for (const folder of [...watchers.keys()]) forget(folder);
  };
}
