import path from "node:path";
import { inReadingOrder } from "../../diagnostics/diagnostic.ts";
import { removeUnasked } from "../../images/asked-for.ts";
import { checkCollection } from "../checks/check-collection.ts";
import { cacheFolder } from "../folders/cache-folder.ts";
import { openStaging } from "../folders/out-folder.ts";
import { CutLogCache } from "../groups/cut-log-cache.ts";
import { groupFamilies } from "../groups/family-groups.ts";
import { gonePages } from "../incremental/gone-pages.ts";
import { spareRecord, stampOfFiles, stampOfFolders } from "../incremental/spare-site.ts";
import type { StandingSite } from "../incremental/standing-site.ts";
import type { BuildResult } from "./build-site.ts";
import { type BuildTask, SiteMaker } from "./site-maker.ts";

/** Before any part of the site asks for something. */
async function removeUnaskedIn(cache: string): Promise<void> {
  for (const kind of ["cards", "site/images", "site/recordings"]) await removeUnasked(path.join(cache, kind));
}

/** Builds beside the site that stands, with as much of it as is still right, and puts the new one in its place. */
export async function buildOver(
  standing: StandingSite,
  task: BuildTask,
  key: string,
  out: string,
): Promise<BuildResult> {
  const { root, audience, texts } = task;
  const filesRead = texts.files.length;
  const logs = new CutLogCache(task.tool, standing.logs);
  const grouped = groupFamilies(texts, logs.cut);
  if (grouped && logs.changed) standing.keepLogs(logs.changed);
  await removeUnaskedIn(cacheFolder(root));
  const staging = openStaging(out, audience, standing.record && ((folder) => standing.isSpare(folder)));
  try {
    const maker = new SiteMaker(task, standing, staging.into);
    const made = grouped ? await maker.run(grouped) : null;
    if (!made) {
      staging.leave();
      const { diagnostics } = checkCollection(root);
      return { written: null, diagnostics: inReadingOrder([...diagnostics, ...maker.refused]), filesRead };
    }
    const { items, pages, warnings, addresses } = made.record;
    const { written: rewritten, unchanged, lacking } = maker.writing;
    const { folder, twin } = staging.into;
    const last = unchanged > rewritten ? standing.record : null;
    const spare = spareRecord(twin, last, addresses, lacking);
    const stamp = stampOfFolders(folder, addresses);
    const fileStamp = stampOfFiles(folder, addresses);
    const gone = gonePages(standing.site, addresses);
    const leftover = staging.publish(spare !== null);
    standing.keep({ ...made.record, key, folder, stamp, fileStamp, spare }, made.groups);
    const written = { items, pages, warnings, rewritten, unchanged, gone, leftover };
    return { written, diagnostics: [], filesRead };
  } catch (problem) {
    staging.discard();
    throw problem;
  }
}
