import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the package itself, whether its TypeScript or its compiled JavaScript is running. */
function findPackageFolder(): string {
  let folder = path.dirname(fileURLToPath(import.meta.url));
  while (!existsSync(path.join(folder, "package.json"))) folder = path.dirname(folder);
  return folder;
}

export const packageFolder = findPackageFolder();

export const packageVersion: string = (
  JSON.parse(readFileSync(path.join(packageFolder, "package.json"), "utf8")) as { version: string }
).version;
