// The demonstration collection as an Eleventy site of its own: `npx eleventy`. The plugin does the work.
import fittedcase from "./dist/shared/site/plugin.js";

export default async function (eleventyConfig) {
  eleventyConfig.setUseGitIgnore(false);
  await eleventyConfig.addPlugin(fittedcase, { root: import.meta.dirname });
}

// Every page is virtual; Eleventy only asks that its input folder be there.
export const config = {
  dir: { input: "templates/styles", output: "_eleventy" },
  templateFormats: ["11ty.js"],
};
