import { copyFileSync, mkdirSync } from "node:fs";
import path from "node:path";
import { reportAsText } from "../diagnostics/report.ts";
import type { Audience } from "../publication/published.ts";
import { loadCollection } from "./load-collection.ts";
import { type SiteContent, siteContent } from "./site-content.ts";

/** As much of Eleventy's configuration as the plugin uses. */
export interface EleventyConfig {
  addTemplate(virtualPath: string, template: unknown): void;
  addGlobalData(name: string, data: unknown): void;
  setUseGitIgnore(use: boolean): void;
  setDataFileSuffixes(suffixes: readonly string[]): void;
  on(event: "eleventy.after", listener: (event: { directories: { output: string } }) => void): void;
}

export interface FittedcaseOptions {
  /** The collection's folder; the current one where unsaid. */
  readonly root?: string;
  readonly audience?: Audience;
  /** A layout of the site around ours, by the name that Eleventy knows it by; ours where unsaid. */
  readonly layout?: string;
}

interface PaginatedData {
  readonly fittedcaseAddress: string;
}

/** Hands a whole site to Eleventy: one virtual template for the pages, one for the data files. */
export function addSite(eleventyConfig: EleventyConfig, content: SiteContent, layout?: string): void {
  // Eleventy merges and copies the data that it is given, so it is given addresses and no pages.
  eleventyConfig.addGlobalData("fittedcase", {
    pages: [...content.pages.keys()],
    files: [...content.files.keys()],
  });
  const over = (list: "pages" | "files") => ({
    pagination: { data: `fittedcase.${list}`, size: 1, alias: "fittedcaseAddress" },
    permalink: ({ fittedcaseAddress }: PaginatedData) => fittedcaseAddress,
    eleventyExcludeFromCollections: true,
  });
  eleventyConfig.addTemplate("fittedcase-pages.11ty.js", {
    data: {
      ...over("pages"),
      ...(layout === undefined ? {} : { layout }),
      eleventyComputed: {
        title: ({ fittedcaseAddress }: PaginatedData) => content.pages.get(fittedcaseAddress)?.title,
        description: ({ fittedcaseAddress }: PaginatedData) =>
          content.pages.get(fittedcaseAddress)?.description,
      },
    },
    render({ fittedcaseAddress }: PaginatedData) {
      const page = content.pages.get(fittedcaseAddress);
      if (!page) throw new Error(`No page has the address "${fittedcaseAddress}".`);
      return layout === undefined ? content.document(page) : content.body(page);
    },
  });
  eleventyConfig.addTemplate("fittedcase-files.11ty.js", {
    data: over("files"),
    render: ({ fittedcaseAddress }: PaginatedData) => content.files.get(fittedcaseAddress)?.text ?? "",
  });
  eleventyConfig.on("eleventy.after", ({ directories }) => {
    for (const { from, address } of content.copied) {
      const to = path.join(directories.output, address);
      mkdirSync(path.dirname(to), { recursive: true });
      copyFileSync(from, to);
    }
  });
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
  const [refused] = content.refused;
  if (refused) throw new Error(`${refused.file}: ${refused.reason}`);
  addSite(eleventyConfig, content, layout);
}
