import {
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  symlinkSync,
} from "node:fs";
import path from "node:path";
import type { Audience } from "../publication/published.ts";

/** The public and the private site never share a folder. */
export const defaultOut = (root: string, audience: Audience): string =>
  path.join(root, audience === "public" ? "_site" : "_private");

/** Something in the surroundings, not in the content, kept a site from being written. */
export class OutFolderError extends Error {}

/** Where a site is written. Plain data, which a thread is given. */
export interface SiteFolder {
  readonly folder: string;
  /** Whether a site lies in it, most of whose files may be those of the new one. */
  readonly isUsed: boolean;
  /** Where every file is linked as soon as it is written, so that the next site can be made in it; null where none is wanted. */
  readonly twin: string | null;
}

/**
 * Where builds go. The out path is a symbolic link to the newest whole build, and each build has a folder of
 * its own beside it: a build that fails, or is killed, never touches what visitors see.
 */
export interface Staging {
  readonly into: SiteFolder;
  /**
   * Puts the finished site in the place of the last one, in one rename; that one may be kept to build the next in, where
   * there is no twin.
   */
  readonly publish: (keepsLast: boolean) => void;
  /** Nothing came of it, and nothing is wrong with the folder. */
  readonly leave: () => void;
  readonly discard: () => void;
}

/**
 * The site before the one that stands, or its twin where it was made from nothing. The two have most files in common, by
 * links, so that the next is made in it by changing a few: to link ten thousand pages anew, and to take ten thousand links
 * away, takes longer than all the rest.
 */
const spare = "spare";

const buildsFolder = (out: string) => path.join(path.dirname(out), `.${path.basename(out)}.builds`);

/** Reads a link without following it; undefined where there is nothing, or something else. */
function linkTarget(out: string): string | undefined {
  const stat = lstatSync(out, { throwIfNoEntry: false });
  return stat?.isSymbolicLink() ? path.resolve(path.dirname(out), readlinkSync(out)) : undefined;
}

/** The folder of the build that stands at an out path; undefined where there is none. */
export function standingFolder(out: string): string | undefined {
  const target = linkTarget(out);
  return target !== undefined && path.dirname(target) === buildsFolder(out) ? target : undefined;
}

const audiences: readonly Audience[] = ["public", "private"];

/** The name of a build's folder ends with whom it is for, so that this outlasts whatever else is known of it. */
const buildName = (count: number, audience: Audience): string => `${process.pid}-${count}-${audience}`;

/** Whom the build is for that a place is in. */
function audienceOf(place: string): Audience | undefined {
  const names = place.split(path.sep);
  const isOf = (audience: Audience) => (name: string, at: number) =>
    /^\d+-\d+-/.test(name) && name.endsWith(`-${audience}`) && names[at - 1]?.endsWith(".builds");
  return audiences.find((audience) => names.some(isOf(audience)));
}

const isWithin = (place: string, folder: string): boolean =>
  `${place}${path.sep}`.startsWith(folder + path.sep);

/** Where a path leads, every link followed that is there already. */
function realPlace(place: string): string {
  const above = path.dirname(place);
  return existsSync(place) || above === place
    ? realpathSync(place)
    : path.join(realPlace(above), path.basename(place));
}

/** Where one site is published, the other has no place: it would be published as well, or be lost to its owner. */
export function refuseOtherAudience(root: string, out: string, audience: Audience): void {
  const places = [realPlace(out), standingFolder(out) ?? []].flat();
  const other = audiences.find(
    (each) =>
      each !== audience &&
      places.some(
        (place) => audienceOf(place) === each || isWithin(place, realPlace(defaultOut(root, each))),
      ),
  );
  if (other === undefined) return;
  throw new OutFolderError(
    `Found "${out}", which is the ${other} site's folder or lies in it, as --out of a ${audience} build; expected another.`,
  );
}

function refuseToReplace(out: string): void {
  const stat = lstatSync(out, { throwIfNoEntry: false });
  if (!stat || stat.isSymbolicLink()) return;
  if (stat.isDirectory() && readdirSync(out).length === 0) return;
  throw new OutFolderError(
    `Found something at "${out}" that Fittedcase did not build; expected an empty or a new folder. Choose another --out, or move it away.`,
  );
}

/** What is read from a collection is no place for what is made of it: the next time the site would be read as well. */
export function refuseWithinSources(root: string, out: string): void {
  // The out path itself may be a link to a build.
  const place = path.join(realPlace(path.dirname(out)), path.basename(out));
  for (const name of ["content", "schemas", "templates"]) {
    const folder = path.join(root, name);
    if (!existsSync(folder) || !isWithin(place, realpathSync(folder))) continue;
    throw new OutFolderError(
      `Found "${out}", inside of ${name}/, where the collection itself lies; expected a folder for the site outside of it, such as "${path.join(root, "_site")}".`,
    );
  }
}

const isAlive = (process_: number): boolean => {
  try {
    process.kill(process_, 0);
    return true;
  } catch (problem) {
    return problem instanceof Error && "code" in problem && problem.code === "EPERM";
  }
};

/** Takes away leftovers of builds that were killed, and sites that have been replaced: all but the one that stands, and the spare. */
export function sweepBuilds(out: string): void {
  const builds = buildsFolder(out);
  for (const name of readdirSync(builds)) {
    const folder = path.join(builds, name);
    const builder = Number(name.split("-")[0]);
    if (name === spare || (builder !== process.pid && isAlive(builder))) continue;
    // Asked last: a builder that is alive no longer may have published meanwhile, but will not any more.
    const standing = linkTarget(out);
    if (standing === folder || standing?.startsWith(folder + path.sep)) continue;
    rmSync(folder, { recursive: true, force: true });
  }
}

/** `isKnown` says whether a folder is the spare as it was left; null where nothing is known of the site that stands. */
export function openStaging(
  out: string,
  audience: Audience,
  isKnown: ((spare: string) => boolean) | null,
): Staging {
  refuseToReplace(out);
  const builds = buildsFolder(out);
  mkdirSync(builds, { recursive: true });
  sweepBuilds(out);
  let count = 0;
  while (existsSync(path.join(builds, buildName(count, audience)))) count++;
  const folder = path.join(builds, buildName(count, audience));
  const ofSpare = path.join(builds, spare);
  const isUsed = isKnown !== null && moved(ofSpare, folder) && (isKnown(folder) || cleared(folder));
  if (!isUsed) mkdirSync(folder);
  const twin = isKnown === null ? `${folder}-twin` : null;
  if (twin !== null) mkdirSync(twin);
  const discard = () => {
    for (const own of [folder, twin ?? folder]) rmSync(own, { recursive: true, force: true });
    if (readdirSync(builds).length === 0) rmdirSync(builds);
  };
  return {
    into: { folder, isUsed, twin },
    publish(keepsLast) {
      refuseToReplace(out);
      const last = standingFolder(out);
      if (lstatSync(out, { throwIfNoEntry: false })?.isDirectory()) rmdirSync(out);
      const link = `${folder}.link`;
      symlinkSync(path.relative(path.dirname(out), folder), link, "junction");
      renameSync(link, out);
      // Whatever is the spare now is swept up below: another build may be about to take it away as well.
      moved(ofSpare, `${folder}-last`);
      const next = twin ?? (keepsLast ? last : undefined);
      if (next !== undefined) moved(next, ofSpare);
      sweepBuilds(out);
    },
    leave() {
      if (!isUsed || existsSync(ofSpare) || !moved(folder, ofSpare)) discard();
    },
    discard,
  };
}

/** False: nothing is there any more. */
function cleared(folder: string): false {
  rmSync(folder, { recursive: true, force: true });
  return false;
}

/** False where another build was sooner: it has taken the one folder, or put its own in the other's place. */
function moved(from: string, to: string): boolean {
  try {
    renameSync(from, to);
    return true;
  } catch (problem) {
    const code = problem instanceof Error && "code" in problem ? problem.code : undefined;
    if (code === "ENOENT" || code === "ENOTEMPTY" || code === "EEXIST") return false;
    throw problem;
  }
}
