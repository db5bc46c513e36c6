import { readdirSync, statSync } from "node:fs";
import path from "node:path";

const isFile = (file: string): boolean => statSync(file, { throwIfNoEntry: false })?.isFile() ?? false;

/** Every file below a folder, in the order of their paths; none where there is no such folder. */
export function filesBelow(folder: string): string[] {
  let names: string[];
  try {
    names = readdirSync(folder, { recursive: true, encoding: "utf8" });
  } catch {
    return [];
  }
  return names
    .sort()
    .map((name) => path.join(folder, name))
    .filter(isFile);
}
