import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Audience } from "../../publication/published.ts";
import { readTexts } from "../../source/read-texts.ts";
import { type Leftover, standingFolder, sweepBuilds } from "../folders/build-folders.ts";
import { cacheFolder } from "../folders/cache-folder.ts";
import { refuseLinkedBuilds, refuseOtherAudience, refuseWithinSources } from "../folders/out-refusals.ts";
import { siteKey, toolKey } from "../incremental/site-keys.ts";
import { LostSite, type SiteRecord, StandingSite } from "../incremental/standing-site.ts";
import type { OnProgress } from "../progress.ts";

export interface WrittenSite extends Pick<SiteRecord, "items" | "pages" | "warnings"> {
  /** How many files were written, and how many stood as they should. */
  readonly rewritten: number;
  readonly unchanged: number;
  /** The addresses of records at which the site before had a page and this one has none. */
  readonly gone: readonly string[];
  readonly leftover: readonly Leftover[];
}

export interface BuildResult {
  /** Null where the content has errors: then nothing was written. */
  readonly written: WrittenSite | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly filesRead: number;
}

/** The whole way, from a folder of Markdown to a site that stands. What nothing has changed of is not made again. */
export async function buildSite(
  root: string,
  out: string,
  audience: Audience,
  onProgress?: OnProgress,
): Promise<BuildResult> {
  refuseWithinSources(root, out);
  refuseOtherAudience(root, out, audience);
  refuseLinkedBuilds(out);
  const texts = readTexts(root);
  const filesRead = texts.files.length;
  const tool = toolKey(root, audience);
  const key = siteKey(tool, root, texts);
  const standing = new StandingSite(cacheFolder(root), out, standingFolder(out));
  standing.forgetUnlessAsLeft();
  if (standing.record?.key === key) {
    const leftover = sweepBuilds(out);
    const { items, pages, warnings, addresses } = standing.record;
    const written = { items, pages, warnings, rewritten: 0, unchanged: addresses.length, gone: [], leftover };
    return { written, diagnostics: [], filesRead };
  }
  // Most of the tool is behind this, and takes longer to load than to see that nothing has changed.
  const { buildOver } = await import("./build-over.ts");
  const task = { root, audience, tool, texts, onProgress };
  try {
    return await buildOver(standing, task, key, out);
  } catch (problem) {
    if (!(problem instanceof LostSite)) throw problem;
    return await buildOver(new StandingSite(cacheFolder(root), out, undefined), task, key, out);
  }
}
