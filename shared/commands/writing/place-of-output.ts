import { existsSync, lstatSync } from "node:fs";
import path from "node:path";
import { isWithin, realPlace } from "../../source/within.ts";
import { UsageError } from "../command.ts";

/**
 * What a command makes of a collection is no record: among the records, it would be taken for one, or be written over one.
 * Nor does it follow a link in the collection's folder: whoever put it there has another file written over.
 */
export function refuseOutput(root: string, target: string, shown: string): void {
  const folder = realPlace(path.dirname(target));
  const place = path.join(folder, path.basename(target));
  const home = realPlace(root);
  for (const own of ["content", "schemas"]) {
    if (!isWithin(realPlace(path.join(root, own)), place)) continue;
    throw new UsageError(
      `Found --out "${shown}" among the collection's own records; expected a place outside them.`,
    );
  }
  const isLink = lstatSync(target, { throwIfNoEntry: false })?.isSymbolicLink() ?? false;
  if ((isLink && isWithin(home, place)) || (isWithin(root, target) && !isWithin(home, folder)))
    throw new UsageError(
      `Found a link at "${shown}", or on the way there; expected a place of its own. Remove the link, or choose another --out.`,
    );
}

export function requireFolder(target: string, shown: string): void {
  if (!existsSync(path.dirname(target)))
    throw new UsageError(`Found no folder for "${shown}"; expected one that exists.`);
}
