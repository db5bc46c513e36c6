import { type FSWatcher, readdirSync, statSync, watch } from "node:fs";
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

const isFolder = (file: string): boolean => statSync(file, { throwIfNoEntry: false })?.isDirectory() ?? false;

/**
 * Tells of every file or folder that changes in some folders of a root, by its path from there, and ends when the
 * returned function is called. Each folder is watched by itself: a recursive watch of Node 20 on Linux follows a file
 * and not its name, and so loses whatever an editor saves by renaming a new file over the old one. A change may be told
 * of more than once.
 */
export function watchFolders(
  root: string,
  folders: readonly string[],
  onChange: (file: string) => void,
): () => void {
  const watchers = new Map<string, FSWatcher>();
  const forget = (folder: string) => {
    for (const [watched, watcher] of watchers) {
      if (watched !== folder && !watched.startsWith(folder + path.sep)) continue;
      watcher.close();
      watchers.delete(watched);
    }
  };
  const tell = (file: string) => onChange(path.relative(root, file).split(path.sep).join("/"));
  const follow = (from: string) => {
    for (const folder of foldersIn(from)) if (!watchers.has(folder)) watchOne(folder);
  };
  const watchOne = (folder: string, isHere: (name: string) => boolean = () => true) => {
    const watcher = watch(folder, (_, name) => {
      if (name === null) return tell(folder);
      if (name.startsWith(".") || !isHere(name)) return;
      const file = path.join(folder, name);
      // A folder that was put in the place of another is not the one that is watched.
      forget(file);
      if (isFolder(file)) follow(file);
      tell(file);
    });
    watcher.on("error", () => forget(folder));
    watchers.set(folder, watcher);
  };
  // One of the folders may come later.
  watchOne(root, (name) => folders.includes(name));
  for (const folder of folders) follow(path.join(root, folder));
  return () => forget(root);
}
