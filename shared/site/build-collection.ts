import path from "node:path";
import { type Diagnostic, inReadingOrder } from "../diagnostics/diagnostic.ts";
import type { Audience } from "../publication/published.ts";
import { readTexts } from "../source/read-records.ts";
import { groupFamilies } from "./family-groups.ts";
import { loadCollection } from "./load-collection.ts";
import { openStaging, standingFolder, sweepBuilds } from "./out-folder.ts";
import type { OnProgress } from "./progress.ts";
import { type BuildTask, SiteBuild } from "./site-build.ts";
import { siteKey, toolKey } from "./site-keys.ts";
import { LostSite, type SiteRecord, StandingSite } from "./standing-site.ts";

export interface WrittenSite extends Pick<SiteRecord, "items" | "pages" | "warnings"> {
  /** How many files were written, and how many stood as they should. */
  readonly rewritten: number;
  readonly unchanged: number;
}

export interface BuildResult {
  /** Null where the content has errors: then nothing was written. */
  readonly written: WrittenSite | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly filesRead: number;
}

/** The whole way, from a folder of Markdown to a site that stands. What nothing has changed of is not made again. */
export async function buildCollection(
  root: string,
  out: string,
  audience: Audience,
  onProgress?: OnProgress,
): Promise<BuildResult> {
  const texts = readTexts(root);
  const filesRead = texts.files.length;
  const cacheFolder = path.join(root, ".cache/fittedcase");
  const tool = toolKey(root, audience);
  const key = siteKey(tool, root, texts);
  const standing = new StandingSite(cacheFolder, out, standingFolder(out));
  if (standing.record && standing.isOf(key)) {
    sweepBuilds(out);
    const { items, pages, warnings, addresses } = standing.record;
    const written = { items, pages, warnings, rewritten: 0, unchanged: addresses.length };
    return { written, diagnostics: [], filesRead };
  }
  const task = { root, audience, tool, texts, onProgress };
  try {
    return await buildOver(standing, task, key, out);
  } catch (problem) {
    if (!(problem instanceof LostSite)) throw problem;
    return await buildOver(new StandingSite(cacheFolder, out, undefined), task, key, out);
  }
}

/** Builds beside the site that stands, with as much of it as is still right, and puts the new one in its place. */
async function buildOver(
  standing: StandingSite,
  task: BuildTask,
  key: string,
  out: string,
): Promise<BuildResult> {
  const { root, texts } = task;
  const filesRead = texts.files.length;
  const grouped = groupFamilies(texts);
  const staging = openStaging(out);
  try {
    const build = new SiteBuild(task, standing, staging);
    const made = grouped ? await build.run(grouped) : null;
    if (!made) {
      staging.leave();
      const { diagnostics } = loadCollection(root);
      return { written: null, diagnostics: inReadingOrder([...diagnostics, ...build.refused]), filesRead };
    }
    staging.publish(build.unchanged > build.rewritten);
    standing.keep({ ...made.record, key, folder: staging.folder }, made.groups);
    const { items, pages, warnings } = made.record;
    const { rewritten, unchanged } = build;
    return { written: { items, pages, warnings, rewritten, unchanged }, diagnostics: [], filesRead };
  } catch (problem) {
    staging.discard();
    throw problem;
  }
}
