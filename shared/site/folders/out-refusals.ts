import { existsSync, lstatSync, readdirSync, realpathSync } from "node:fs";
import path from "node:path";
import type { Audience } from "../../publication/published.ts";
import { isWithin, realPlace } from "../../source/within.ts";
import { audienceOf, buildsFolder, standingFolder } from "./build-folders.ts";

/** The public and the private site never share a folder. */
export const defaultOut = (root: string, audience: Audience): string =>
  path.join(root, audience === "public" ? "_site" : "_private");

/** Something in the surroundings, not in the content, kept a site from being written. */
export class OutFolderError extends Error {}

/** Where one site is published, the other has no place: it would be published as well, or be lost to its owner. */
export function refuseOtherAudience(root: string, out: string, audience: Audience): void {
  const places = [realPlace(out), standingFolder(out) ?? []].flat();
  const other = (["public", "private"] as const).find(
    (each) =>
      each !== audience &&
      places.some(
        (place) => audienceOf(place) === each || isWithin(realPlace(defaultOut(root, each)), place),
      ),
  );
  if (other === undefined) return;
  throw new OutFolderError(
    `Found "${out}", which is the ${other} site's folder or lies in it, as --out of a ${audience} build; expected another.`,
  );
}

/** What is read from a collection is no place for what is made of it: the next time the site would be read as well. */
export function refuseWithinSources(root: string, out: string): void {
  // The out path itself may be a link to a build.
  const place = path.join(realPlace(path.dirname(out)), path.basename(out));
  for (const name of ["content", "schemas", "templates"]) {
    const folder = path.join(root, name);
    if (!existsSync(folder) || !isWithin(realpathSync(folder), place)) continue;
    throw new OutFolderError(
      `Found "${out}", inside ${name}/, where the collection itself lies; expected a folder outside it, such as "${path.join(root, "_site")}".`,
    );
  }
}

/** What we build stands behind a link of our own: any other link is somebody's, and leads to what is theirs. */
export function refuseToReplace(out: string): void {
  const stat = lstatSync(out, { throwIfNoEntry: false });
  if (!stat || standingFolder(out) !== undefined) return;
  if (stat.isDirectory() && readdirSync(out).length === 0) return;
  const found = stat.isSymbolicLink() ? "a link" : "something";
  throw new OutFolderError(
    `Found ${found} at "${out}" that Fittedcase did not build; expected an empty or new folder. Choose another --out, or move it away.`,
  );
}

/** Whoever follows a link writes, and takes away, where it leads: perhaps among what is somebody else's. */
export function refuseLinked(folder: string, purpose: string): void {
  if (!lstatSync(folder, { throwIfNoEntry: false })?.isSymbolicLink()) return;
  throw new OutFolderError(
    `Found a link at "${folder}", where ${purpose}; expected a folder, or nothing. Remove the link.`,
  );
}

export const refuseLinkedBuilds = (out: string): void =>
  refuseLinked(buildsFolder(out), "the builds of a site lie");
