import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { type GuestSite, guestContent, mountAddress } from "./guest-site.ts";
import type { SiteContent } from "./site-content.ts";

/** As much of Eleventy's configuration as the plugin uses. */
export interface EleventyConfig {
  addTemplate(virtualPath: string, template: unknown): void;
  addGlobalData(name: string, data: unknown): void;
  setUseGitIgnore(use: boolean): void;
  setDataFileSuffixes(suffixes: readonly string[]): void;
  readonly ignores: { add(glob: string): void };
  addWatchTarget(path: string, options: { resetConfig: boolean }): void;
  on(event: "eleventy.after", listener: (event: { directories: { output: string } }) => void): void;
}

interface PaginatedData {
  readonly fittedcaseAddress: string;
}

/** Hands a whole site to Eleventy: one virtual template for the pages, one for the data files. */
export function addSite(
  eleventyConfig: EleventyConfig,
  whole: SiteContent,
  { layout, at = "/" }: GuestSite = {},
): void {
  const content = layout === undefined ? whole : guestContent(whole);
  const folder = mountAddress(at);
  // Eleventy merges and copies the data that it is given, so it is given addresses and no pages.
  eleventyConfig.addGlobalData("fittedcase", {
    pages: [...content.pages.keys()],
    files: [...content.files.keys()],
  });
  const over = (list: "pages" | "files") => ({
    pagination: { data: `fittedcase.${list}`, size: 1, alias: "fittedcaseAddress" },
    permalink: ({ fittedcaseAddress }: PaginatedData) => folder + fittedcaseAddress.slice(1),
    eleventyExcludeFromCollections: true,
  });
  const headOf = ({ fittedcaseAddress }: PaginatedData) => {
    const page = content.pages.get(fittedcaseAddress);
    return page && content.head(page, content.style);
  };
  eleventyConfig.addTemplate("fittedcase-pages.11ty.js", {
    data: {
      ...over("pages"),
      ...(layout === undefined ? {} : { layout }),
      eleventyComputed: {
        title: ({ fittedcaseAddress }: PaginatedData) => content.pages.get(fittedcaseAddress)?.title,
        description: ({ fittedcaseAddress }: PaginatedData) =>
          content.pages.get(fittedcaseAddress)?.description,
        ...(layout === undefined ? {} : { fittedcaseHead: headOf }),
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
      const to = path.join(directories.output, folder, address);
      mkdirSync(path.dirname(to), { recursive: true });
      copyFileSync(from, to);
    }
    for (const { address, bytes } of content.packed) {
      const to = path.join(directories.output, folder, address);
      mkdirSync(path.dirname(to), { recursive: true });
      writeFileSync(to, bytes);
    }
  });
}
