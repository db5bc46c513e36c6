import { mkdirSync, rmdirSync } from "node:fs";
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import type { Audience } from "../publication/published.ts";
import { addSite } from "./add-site.ts";
import { openStaging } from "./out-folder.ts";
import type { SiteContent } from "./site-content.ts";

export interface WrittenSite {
  readonly items: number;
  readonly pages: number;
  readonly files: number;
}

/**
 * Writes a whole site to a folder of its own and puts it in the place of the last one.
 *
 * Eleventy takes paths relative to the current folder, and picks up whatever configuration, data or code file
 * lies in its input folder: it is run from the new folder, on an input folder that is empty.
 */
export async function buildSite(content: SiteContent, out: string): Promise<WrittenSite> {
  const staging = openStaging(out);
  const cwd = process.cwd();
  const source = path.join(staging.folder, ".source");
  try {
    mkdirSync(source);
    process.chdir(staging.folder);
    const eleventy = new Eleventy(".source", ".", {
      configPath: "",
      quietMode: true,
      config(eleventyConfig) {
        eleventyConfig.setUseGitIgnore(false);
        eleventyConfig.setDataFileSuffixes([]);
        addSite(eleventyConfig, content);
      },
    });
    eleventy.disableLogger();
    await eleventy.write();
    rmdirSync(source);
    process.chdir(cwd);
    staging.publish();
  } catch (problem) {
    process.chdir(cwd);
    staging.discard();
    throw problem;
  }
  return {
    items: content.collection.items.length,
    pages: content.pages.size,
    files: content.pages.size + content.files.size + content.copied.length + content.packed.length,
  };
}

/** The public and the private site never share a folder. */
export const defaultOut = (root: string, audience: Audience): string =>
  path.join(root, audience === "public" ? "_site" : "_private");
