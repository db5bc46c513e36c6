import { inReadingOrder } from "../diagnostics/diagnostic.ts";
import type { BuildResult } from "./build-collection.ts";
import { groupFamilies } from "./family-groups.ts";
import { loadCollection } from "./load-collection.ts";
import { openStaging } from "./out-folder.ts";
import { type BuildTask, SiteBuild } from "./site-build.ts";
import type { StandingSite } from "./standing-site.ts";

/** Builds beside the site that stands, with as much of it as is still right, and puts the new one in its place. */
export async function buildOver(
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
