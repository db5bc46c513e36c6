import path from "node:path";
import { reportAsText } from "../diagnostics/report.ts";
import type { Audience } from "../publication/published.ts";
import { addSite, type EleventyConfig } from "./add-site.ts";
import { loadCollection } from "./load-collection.ts";
import { refusedFiles } from "./refused-files.ts";
import { siteContent } from "./site-content.ts";

export interface FittedcaseOptions {
  /** The collection's folder; the current one where unsaid. */
  readonly root?: string;
  readonly audience?: Audience;
  /** A layout of the site around ours, by the name that Eleventy knows it by; ours where unsaid. */
  readonly layout?: string;
}

/** The Eleventy plugin: `await eleventyConfig.addPlugin(fittedcase, { root: "." })`. */
export default async function fittedcase(
  eleventyConfig: EleventyConfig,
  { root = ".", audience = "public", layout }: FittedcaseOptions = {},
): Promise<void> {
  const folder = path.resolve(root);
  const loaded = loadCollection(folder);
  if (!loaded.sound)
    throw new Error(`The collection has errors.\n\n${reportAsText(loaded.diagnostics, loaded.filesRead)}`);
  const content = await siteContent(folder, loaded.sound, audience);
  const unreadable = refusedFiles(loaded.sound, content.refused);
  if (unreadable.length > 0)
    throw new Error(`The collection has errors.\n\n${reportAsText(unreadable, loaded.filesRead)}`);
  addSite(eleventyConfig, content, layout);
}
