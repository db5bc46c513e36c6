import { type FSWatcher, readdirSync, realpathSync, statSync, watch } from "node:fs";
import path from "node:path";
import { staysInside } from "../../source/text-file.ts";

const isFolder = (file: string): boolean => statSync(file, { throwIfNoEntry: false })?.isDirectory() ?? false;

/**
 * Every folder below one, itself included; none where there is none. A link to a folder of the same root is one of them,
 * as it is where records are looked for.
 */
function foldersIn(root: string, from: string): string[] {
  const entered = new Set<string>();
  const walk = (folder: string, real: string): string[] => {
    // A link may lead back to where it lies.
    if (entered.has(real)) return [];
    entered.add(real);
    const below = readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
      const { name } = entry;
      const full = path.join(folder, name);
      if (name.startsWith(".")) return [];
      if (entry.isDirectory()) return tried(full, path.join(real, name));
      const isOurs = entry.isSymbolicLink() && isFolder(full) && staysInside(root, full);
      return isOurs ? tried(full, realpathSync(full)) : [];
    });
    return [folder, ...below];
  };
  const tried = (folder: string, real: string): string[] => {
    try {
      return walk(folder, real);
    } catch {
      return [];
    }
  };
  return isFolder(from) ? tried(from, realpathSync(from)) : [];
}

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
    for (const folder of foldersIn(root, from)) if (!watchers.has(folder)) watchOne(folder);
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
