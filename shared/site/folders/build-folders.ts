import { randomBytes } from "node:crypto";
import { lstatSync, readdirSync, readlinkSync, rmSync } from "node:fs";
import path from "node:path";
import type { Audience } from "../../publication/published.ts";

/** Where the builds of a site lie, each in a folder of its own. */
export const buildsFolder = (out: string) => path.join(path.dirname(out), `.${path.basename(out)}.builds`);

const audiences: readonly Audience[] = ["public", "private"];

/** Whose process made it, chance, and whom it is for; and what goes along with a build while it is made. */
const ofBuild = /^(\d+)-[0-9a-f]+-(public|private)(?:-twin|-last|\.link)?$/;

/**
 * The name of a build's folder. No two builds have the same name, although a process may have the number of an
 * earlier one: what is known of the one build would be believed of the other. The name ends with whom the build is
 * for, so that this is known even when everything else is lost.
 */
export const newBuildName = (audience: Audience): string =>
  `${process.pid}-${randomBytes(6).toString("hex")}-${audience}`;

/** Whom the build is for that a place is in. */
export function audienceOf(place: string): Audience | undefined {
  const names = place.split(path.sep);
  const found = names.find((name, at) => ofBuild.test(name) && names[at - 1]?.endsWith(".builds"));
  return audiences.find((audience) => audience === ofBuild.exec(found ?? "")?.[2]);
}

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

const isAlive = (process_: number): boolean => {
  try {
    process.kill(process_, 0);
    return true;
  } catch (problem) {
    return problem instanceof Error && "code" in problem && problem.code === "EPERM";
  }
};

/** What an earlier build left, and the machine does not let go of. */
export interface Leftover {
  readonly folder: string;
  readonly reason: string;
}

/**
 * Takes away leftovers of builds that were killed, and sites that have been replaced: all but the one that stands, the
 * spare, and whatever else lies there that is no build. Returns what could not be taken away, which harms no site.
 */
export function sweepBuilds(out: string): Leftover[] {
  const builds = buildsFolder(out);
  return readdirSync(builds).flatMap((name) => {
    const builder = Number(ofBuild.exec(name)?.[1] ?? Number.NaN);
    if (Number.isNaN(builder) || (builder !== process.pid && isAlive(builder))) return [];
    const folder = path.join(builds, name);
    // Asked last: a builder that is alive no longer may have published meanwhile, but will not any more.
    return standingFolder(out) === folder ? [] : (takenAway(folder) ?? []);
  });
}

/** Null where it is gone. */
export function takenAway(folder: string): Leftover | null {
  try {
    rmSync(folder, { recursive: true, force: true });
    return null;
  } catch (problem) {
    return { folder, reason: problem instanceof Error ? problem.message : String(problem) };
  }
}
