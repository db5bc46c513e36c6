import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { gunzipSync } from "node:zlib";

/** Every file below a folder, as relative path and bytes; links are followed at the top only. */
export function siteFiles(folder: string): Map<string, Buffer> {
  const files = new Map<string, Buffer>();
  const walk = (relative: string) => {
    for (const name of readdirSync(path.join(folder, relative)).sort()) {
      const file = relative === "" ? name : `${relative}/${name}`;
      const full = path.join(folder, file);
      if (statSync(full).isDirectory()) walk(file);
      else {
        const bytes = readFileSync(full);
        files.set(file, bytes);
        // What is compressed is read as a reader's browser reads it, beside the file itself.
        if (file.endsWith(".gz")) files.set(file.slice(0, -".gz".length), gunzipSync(bytes));
      }
    }
  };
  walk("");
  return files;
}

/** The names of the files in which two sites differ. */
export function differences(one: ReadonlyMap<string, Buffer>, other: ReadonlyMap<string, Buffer>): string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => {
    const [a, b] = [one.get(name), other.get(name)];
    return a === undefined || b === undefined || !a.equals(b);
  });
}
