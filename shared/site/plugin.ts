import { existsSync } from "node:fs";
import path from "node:path";
import { reportAsText } from "../diagnostics/report.ts";
import type { Audience } from "../publication/published.ts";
import { addSite, type EleventyConfig } from "./eleventy/add-site.ts";
import { everyFile } from "./eleventy/every-file.ts";
import type { GuestSite } from "./eleventy/guest-site.ts";

export interface FittedcaseOptions extends GuestSite {
  /** The collection's folder; the current one where unsaid. */
  readonly root?: string;
  readonly audience?: Audience;
}

/** The Eleventy plugin: `await eleventyConfig.addPlugin(fittedcase, { root: "." })`. Eleventy renders every page. */
export default async function fittedcase(
  eleventyConfig: EleventyConfig,
  { root = ".", audience = "public", ...guest }: FittedcaseOptions = {},
): Promise<void> {
  const folder = path.resolve(root);
  watch(eleventyConfig, folder);
  const site = await everyFile(folder, audience);
  if ("problems" in site)
    throw new Error(`The collection has errors.\n\n${reportAsText(site.problems, site.filesRead)}`);
  addSite(eleventyConfig, site.parts, guest);
}

/**
 * Which of the collection's files Eleventy's server watches, and which it leaves alone. Said before anything is read:
 * where a mistake ends the plugin, only then does the corrected record start again with a new configuration.
 */
function watch(eleventyConfig: EleventyConfig, folder: string): void {
  // All that is shown is made here: a change begins here again. Our records are no pages of the host's.
  const fromHere = `./${path.relative(process.cwd(), folder).split(path.sep).join("/")}`.replace(/\/*$/, "/");
  for (const own of ["content", "schemas", "templates"]) {
    if (existsSync(path.join(folder, own)))
      eleventyConfig.addWatchTarget(`${fromHere}${own}/`, { resetConfig: true });
  }
  const ours =
    fromHere === "./"
      ? ["content/items/**", "content/articles/**", "content/sightings/**", "schemas/**", "_private*/**"]
      : ["**"];
  for (const own of ours) eleventyConfig.ignores.add(fromHere + own);
  // What is written while a site is made would begin the next one, without end.
  for (const written of [".cache/fittedcase/**", ".*.builds/**", "_site/**", "_private*/**"])
    eleventyConfig.watchIgnores.add(fromHere + written);
}
