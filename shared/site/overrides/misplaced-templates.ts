import { readFileSync, realpathSync } from "node:fs";
import path from "node:path";
import { templates } from "../../../templates/templates.ts";
import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import { startOf } from "../../diagnostics/place.ts";
import { packageFolder } from "../../source/package-folder.ts";
import { filesBelow } from "../files-below.ts";

const names = Object.keys(templates);
const folders = [...new Set(names.map((name) => path.posix.dirname(name))), "styles"];
const stemOf = (name: string): string => path.posix.basename(name).replace(/\.[^.]+$/, "");

/** Files of the user's own that stand in for none of our templates, though they lie where those do. */
export function misplacedTemplates(root: string): Diagnostic[] {
  const folder = path.join(root, "templates");
  // Where the collection is the tool's own repository, they are the tool's own.
  if (realpathSync(root) === realpathSync(packageFolder)) return [];
  const files = filesBelow(folder)
    .map((file) => path.relative(folder, file).split(path.sep).join("/"))
    .filter((file) => !/(?:^|\/)\./.test(file));
  return files.filter((file) => isMisplaced(file) && !isImported(file, files, folder)).map(told);
}

function isMisplaced(file: string): boolean {
  const within = path.posix.dirname(file);
  if (within === "styles") return !file.endsWith(".css");
  if (names.some((name) => file === `${name}.js`)) return false;
  // What lies in a folder of another name is for their own templates to import.
  return within === "." || nearestName(within, folders) !== undefined;
}

/** What another of their templates names is a part of it. */
const isImported = (file: string, files: readonly string[], folder: string): boolean =>
  files.some(
    (other) =>
      other !== file &&
      /\.[cm]?js$/.test(other) &&
      textOf(path.join(folder, other)).includes(`/${path.posix.basename(file)}`),
  );

/** Nothing of what cannot be read: whoever builds with it finds that out. */
function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return "";
  }
}

function told(file: string): Diagnostic {
  const stem = stemOf(file);
  const beside = names.filter((name) => path.posix.dirname(name) === path.posix.dirname(file));
  const among = beside.length > 0 ? beside : names;
  const nearest = nearestName(stem, among.map(stemOf));
  const meant = among.find((name) => stemOf(name) === nearest);
  return diagnose("misplaced-file", startOf(`templates/${file}`), {
    found: "a file that replaces none of the tool's own templates",
    expected: "the name of one, such as templates/pages/item.js, or a style sheet in templates/styles/",
    remedy: meant === undefined ? undefined : `Did you mean "templates/${meant}.js"?`,
  });
}
