import { mkdirSync, rmdirSync } from "node:fs";
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import { addSite, type SiteFiles } from "./add-site.ts";

/**
 * Has Eleventy write files into a folder.
 *
 * Eleventy takes paths relative to the current folder, and picks up whatever configuration, data or code file lies in
 * its input folder: it is run from the new folder, on an input folder that is empty.
 */
export async function runEleventy(folder: string, parts: readonly SiteFiles[]): Promise<void> {
  const cwd = process.cwd();
  const source = path.join(folder, ".source");
  mkdirSync(source);
  process.chdir(folder);
  try {
    const eleventy = new Eleventy(".source", ".", {
      configPath: "",
      quietMode: true,
      config(eleventyConfig) {
        eleventyConfig.setUseGitIgnore(false);
        eleventyConfig.setDataFileSuffixes([]);
        addSite(eleventyConfig, parts);
      },
    });
    eleventy.disableLogger();
    await eleventy.write();
    rmdirSync(source);
  } finally {
    // After a failure Eleventy goes on with what it has begun, as far as the next turn, in the folder that is current.
    await new Promise(setImmediate);
    process.chdir(cwd);
  }
}
