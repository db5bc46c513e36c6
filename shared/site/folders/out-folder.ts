import {
  accessSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmdirSync,
  symlinkSync,
} from "node:fs";
import path from "node:path";
import type { Audience } from "../../publication/published.ts";
import {
  buildsFolder,
  type Leftover,
  newBuildName,
  standingFolder,
  sweepBuilds,
  takenAway,
} from "./build-folders.ts";
import { refuseToReplace } from "./out-refusals.ts";

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
   * Puts the finished site in the place of the last one, in one rename. The last one may be kept to build the next
   * in, where there is no twin. Throws before the rename or not at all, and returns what could not be tidied up after
   * it.
   */
  readonly publish: (keepsLast: boolean) => readonly Leftover[];
  /** Nothing came of it, and nothing is wrong with the folder. */
  readonly leave: () => void;
  /** Leaves alone what visitors see. */
  readonly discard: () => void;
}

/**
 * The site before the one that stands; or the twin of that one, where it was made from nothing. The two share most
 * files, by links, so that the next site can be made in it by changing a few. To link ten thousand pages anew, and to
 * remove ten thousand links, takes longer than all the rest.
 */
const spare = "spare";

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
  const folder = path.join(builds, newBuildName(audience));
  const [link, last] = [`${folder}.link`, `${folder}-last`];
  const ofSpare = path.join(builds, spare);
  const isUsed = isKnown !== null && moved(ofSpare, folder) && mayBeWritten(folder) && isKnown(folder);
  if (!isUsed) {
    if (moved(folder, last)) takenAway(last);
    mkdirSync(folder);
  }
  const twin = isKnown === null ? `${folder}-twin` : null;
  if (twin !== null) mkdirSync(twin);
  const discard = () => {
    if (standingFolder(out) === folder) return;
    for (const own of [link, folder, twin ?? folder]) takenAway(own);
    if (readdirSync(builds).length === 0) rmdirSync(builds);
  };
  return {
    into: { folder, isUsed, twin },
    publish(keepsLast) {
      refuseToReplace(out);
      const before = standingFolder(out);
      if (lstatSync(out, { throwIfNoEntry: false })?.isDirectory()) rmdirSync(out);
      symlinkSync(path.relative(path.dirname(out), folder), link);
      renameSync(link, out);
      // Whatever is the spare now is swept up below: another build may be about to take it away as well.
      moved(ofSpare, last);
      const next = twin ?? (keepsLast ? before : undefined);
      if (next !== undefined) moved(next, ofSpare);
      return sweepBuilds(out);
    },
    leave() {
      if (!isUsed || existsSync(ofSpare) || !moved(folder, ofSpare)) discard();
    },
    discard,
  };
}

/** Somebody else may have made the last build, as a container or an administrator does. */
function mayBeWritten(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * False where the folder cannot be moved: another build was sooner, and took the one folder or put its own in the
 * place of the other; or the machine does not allow it. What is not moved is swept up, now or later.
 */
function moved(from: string, to: string): boolean {
  try {
    renameSync(from, to);
    return true;
  } catch {
    return false;
  }
}
