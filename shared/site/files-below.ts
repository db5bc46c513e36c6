import { type Dirent, readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import { digest } from "./digest.ts";

/** Every file below a folder, in the order of their paths; none where there is no such folder. */
export function filesBelow(folder: string): string[] {
  const entered = new Set<string>();
  const walk = (at: string): string[] => {
    let entries: Dirent[];
    try {
      // A link may lead back to where it lies.
      const real = realpathSync(at);
      if (entered.has(real)) return [];
      entered.add(real);
      entries = readdirSync(at, { withFileTypes: true });
    } catch {
      return [];
    }
    return entries.flatMap((entry) => {
      const file = path.join(at, entry.name);
      if (entry.isDirectory() || leadsTo(entry, file)?.isDirectory()) return walk(file);
      return entry.isFile() || leadsTo(entry, file)?.isFile() ? [file] : [];
    });
  };
  return walk(folder).sort();
}

function leadsTo(entry: Dirent, file: string) {
  if (!entry.isSymbolicLink()) return undefined;
  try {
    return statSync(file, { throwIfNoEntry: false });
  } catch {
    // Links that lead to one another.
    return undefined;
  }
}

/** Of every file below a folder, with its name. */
export const contentsBelow = (folder: string): string =>
  digest(
    ...filesBelow(folder).flatMap((file) => [path.relative(folder, file), readFileSync(file, "latin1")]),
  );
