import path from "node:path";
import { type Diagnostic, inReadingOrder } from "../diagnostics/diagnostic.ts";
import type { Audience } from "../publication/published.ts";
import { readTexts } from "../source/read-records.ts";
import { groupFamilies } from "./family-groups.ts";
import { loadCollection } from "./load-collection.ts";
import { openStaging, standingFolder } from "./out-folder.ts";
import type { OnProgress } from "./progress.ts";
import { SiteBuild } from "./site-build.ts";
import { siteKey, toolKey } from "./site-keys.ts";
import { type SiteRecord, StandingSite } from "./standing-site.ts";

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
  const tool = toolKey(root, audience);
  const key = siteKey(tool, root, texts);
  const standing = new StandingSite(path.join(root, ".cache/fittedcase"), out, standingFolder(out));
  if (standing.record && standing.isOf(key)) {
    const { items, pages, warnings, addresses } = standing.record;
    const written = { items, pages, warnings, rewritten: 0, unchanged: addresses.length };
    return { written, diagnostics: [], filesRead };
  }
  const grouped = groupFamilies(texts);
  const staging = openStaging(out);
  try {
    const build = new SiteBuild({ root, audience, tool, texts, onProgress }, standing, staging.folder);
    const made = grouped ? await build.run(grouped) : null;
    if (!made) {
      staging.discard();
      const { diagnostics } = loadCollection(root);
      return { written: null, diagnostics: inReadingOrder([...diagnostics, ...build.refused]), filesRead };
    }
    staging.publish();
    standing.keep({ ...made.record, key, folder: standingFolder(out) ?? "" }, made.groups);
    const { items, pages, warnings } = made.record;
    const { rewritten, unchanged } = build;
    return { written: { items, pages, warnings, rewritten, unchanged }, diagnostics: [], filesRead };
  } catch (problem) {
    staging.discard();
    throw problem;
  }
}
