import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { tally } from "../diagnostics/report.ts";
import type { Audience } from "../publication/published.ts";
import { buildSite, type WrittenSite } from "./build-site.ts";
import type { OnProgress } from "./collection-media.ts";
import { loadCollection } from "./load-collection.ts";
import { refusedFiles } from "./refused-files.ts";
import { siteContent } from "./site-content.ts";

export interface BuildResult {
  /** Null where the content has errors: then nothing was written. */
  readonly written: WrittenSite | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly filesRead: number;
}

/** The whole way, from a folder of Markdown to a site that stands. */
export async function buildCollection(
  root: string,
  out: string,
  audience: Audience,
  onProgress?: OnProgress,
): Promise<BuildResult> {
  const { sound, diagnostics, filesRead } = loadCollection(root);
  if (!sound) return { written: null, diagnostics, filesRead };
  const content = await siteContent(root, sound, audience, onProgress);
  const unreadable = refusedFiles(sound, content.refused);
  const all = [...diagnostics, ...unreadable];
  if (tally(unreadable).errors > 0) return { written: null, diagnostics: all, filesRead };
  return { written: await buildSite(content, out), diagnostics: all, filesRead };
}
