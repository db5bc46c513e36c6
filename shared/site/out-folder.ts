import {
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readlinkSync,
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

/**
 * Where builds go. The out path is a symbolic link to the newest whole build, and each build has a folder of
 * its own beside it: a build that fails, or is killed, never touches what visitors see.
 */
export interface Staging {
  /** Where the site is to be written. */
  readonly folder: string;
  /** Whether an earlier site lies in it, most of whose files may be those of the new one. */
  readonly isUsed: boolean;
  /** Puts the finished site in the place of the last one, in one rename; that one may be kept to build the next in. */
  readonly publish: (keepsLast: boolean) => void;
  /** Nothing came of it, and nothing is wrong with the folder. */
  readonly leave: () => void;
  readonly discard: () => void;
}

/**
 * The site before the one that stands. The two have most files in common, by links, so that the next is made in it by
 * changing a few: to link ten thousand pages anew, and to take ten thousand links away, takes longer than all the rest.
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

function refuseToReplace(out: string): void {
  const stat = lstatSync(out, { throwIfNoEntry: false });
  if (!stat || stat.isSymbolicLink()) return;
  if (stat.isDirectory() && readdirSync(out).length === 0) return;
  throw new OutFolderError(
    `Found something at "${out}" that Fittedcase did not build; expected an empty or a new folder. Choose another --out, or move it away.`,
  );
}

const isAlive = (process_: number): boolean => {
  try {
    process.kill(process_, 0);
    return true;
  } catch (problem) {
    return problem instanceof Error && "code" in problem && problem.code === "EPERM";
  }
};

/** Leftovers of builds that were killed, and sites that have been replaced; the one that stands is kept, and the spare. */
function sweep(builds: string, standing: string | undefined): void {
  for (const name of readdirSync(builds)) {
    const folder = path.join(builds, name);
    const builder = Number(name.split("-")[0]);
    if (standing?.startsWith(folder + path.sep) || standing === folder) continue;
    if (name === spare || (builder !== process.pid && isAlive(builder))) continue;
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Takes away what builds left behind that did not come to their end. */
export function sweepBuilds(out: string): void {
  sweep(buildsFolder(out), linkTarget(out));
}

export function openStaging(out: string): Staging {
  refuseToReplace(out);
  const builds = buildsFolder(out);
  mkdirSync(builds, { recursive: true });
  sweep(builds, linkTarget(out));
  let count = 0;
  while (existsSync(path.join(builds, `${process.pid}-${count}`))) count++;
  const folder = path.join(builds, `${process.pid}-${count}`);
  const ofSpare = path.join(builds, spare);
  const isUsed = existsSync(out) && moved(ofSpare, folder);
  if (!isUsed) mkdirSync(folder);
  const discard = () => {
    rmSync(folder, { recursive: true, force: true });
    if (readdirSync(builds).length === 0) rmdirSync(builds);
  };
  return {
    folder,
    isUsed,
    publish(keepsLast) {
      refuseToReplace(out);
      const last = standingFolder(out);
      if (lstatSync(out, { throwIfNoEntry: false })?.isDirectory()) rmdirSync(out);
      const link = `${folder}.link`;
      symlinkSync(path.relative(path.dirname(out), folder), link, "junction");
      renameSync(link, out);
      rmSync(ofSpare, { recursive: true, force: true });
      if (keepsLast && last !== undefined) moved(last, ofSpare);
      sweep(builds, folder);
    },
    leave() {
      if (!isUsed || existsSync(ofSpare) || !moved(folder, ofSpare)) discard();
    },
    discard,
  };
}

/** False where it is not there any more: another build has taken it. */
function moved(from: string, to: string): boolean {
  try {
    renameSync(from, to);
    return true;
  } catch (problem) {
    if (problem instanceof Error && "code" in problem && problem.code === "ENOENT") return false;
    throw problem;
  }
}
