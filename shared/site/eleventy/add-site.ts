import path from "node:path";
import { renderBody, renderHead, renderPage, type Site } from "../../../templates/render-page.ts";
import type { Page } from "../../pages/site-pages.ts";
import type { SiteFile } from "../files/site-file.ts";
import { SiteWriter } from "../incremental/site-writer.ts";
import { belowTheirs, type GuestSite, isOfTheHost, mountAddress } from "./guest-site.ts";

/** As much of Eleventy's configuration as the plugin uses. */
export interface EleventyConfig {
  addTemplate(virtualPath: string, template: unknown): void;
  addGlobalData(name: string, data: unknown): void;
  setUseGitIgnore(use: boolean): void;
  setDataFileSuffixes(suffixes: readonly string[]): void;
  readonly ignores: { add(glob: string): void };
  readonly watchIgnores: { add(glob: string): void };
  addWatchTarget(path: string, options: { resetConfig: boolean }): void;
  on(event: "eleventy.after", listener: (event: { directories: { output: string } }) => void): void;
}

interface PaginatedData {
  readonly fittedcaseAddress: string;
}

/** Files with what their templates print of the site around them. */
export interface SiteFiles {
  readonly files: Iterable<SiteFile>;
  readonly site: Site;
}

/** Hands files to Eleventy: one virtual template for the pages, one for the texts; the rest is written beside them. */
export function addSite(
  eleventyConfig: EleventyConfig,
  parts: readonly SiteFiles[],
  { layout, at = "/" }: GuestSite = {},
): void {
  const isGuest = layout !== undefined;
  const folder = mountAddress(at);
  const pages = new Map<string, { readonly make: () => Page; readonly site: Site }>();
  const texts = new Map<string, string>();
  const others: SiteFile[] = [];
  const add = (file: SiteFile, site: Site) => {
    if (isGuest && isOfTheHost(file.address)) return;
    if (file.kind === "page") pages.set(file.address, { make: file.make, site });
    else if (file.kind === "text") texts.set(file.address, file.text);
    else others.push(file);
  };
  for (const { files, site } of parts) {
    for (const file of files) add(file, site);
  }
  /** By the address of a sheet, that of the one which stands in its place within somebody else's layout. */
  const below = new Map<string, string>();
  for (const { site } of isGuest ? parts : []) {
    for (const sheet of [site.assets.style, site.assets.printStyle]) {
      const text = texts.get(sheet);
      if (text === undefined) continue;
      const theirs = belowTheirs(text);
      texts.delete(sheet);
      texts.set(theirs.address, theirs.text);
      below.set(sheet, theirs.address);
    }
  }
  // A layout asks for the title, the description and the page itself: it is made once for all of them.
  let latest: Page | undefined;
  const pageAt = ({ fittedcaseAddress }: PaginatedData): { readonly page: Page; readonly site: Site } => {
    const known = pages.get(fittedcaseAddress);
    if (!known) throw new Error(`No page has the address "${fittedcaseAddress}".`);
    if (latest?.address !== fittedcaseAddress) latest = known.make();
    return { page: latest, site: known.site };
  };
  const headOf = (data: PaginatedData) => {
    const { page, site } = pageAt(data);
    const { style, printStyle } = site.assets;
    const sheets = { style: below.get(style) ?? style, printStyle: below.get(printStyle) ?? printStyle };
    return renderHead(page, { ...site, assets: { ...site.assets, ...sheets } });
  };

  // Eleventy merges and copies the data that it is given, so it is given addresses and no pages.
  eleventyConfig.addGlobalData("fittedcase", { pages: [...pages.keys()], files: [...texts.keys()] });
  const over = (list: "pages" | "files") => ({
    pagination: { data: `fittedcase.${list}`, size: 1, alias: "fittedcaseAddress" },
    permalink: ({ fittedcaseAddress }: PaginatedData) => folder + fittedcaseAddress.slice(1),
    eleventyExcludeFromCollections: true,
  });
  const ofLayout = {
    layout,
    eleventyComputed: {
      title: (data: PaginatedData) => pageAt(data).page.title,
      description: (data: PaginatedData) => pageAt(data).page.description,
      fittedcaseHead: headOf,
    },
  };
  eleventyConfig.addTemplate("fittedcase-pages.11ty.js", {
    data: { ...over("pages"), ...(isGuest ? ofLayout : {}) },
    render(data: PaginatedData) {
      const { page, site } = pageAt(data);
      return isGuest ? renderBody(page, site) : renderPage(page, site);
    },
  });
  eleventyConfig.addTemplate("fittedcase-files.11ty.js", {
    data: over("files"),
    render: ({ fittedcaseAddress }: PaginatedData) => texts.get(fittedcaseAddress) ?? "",
  });
  eleventyConfig.on("eleventy.after", ({ directories }) => {
    const writer = new SiteWriter({
      folder: path.join(directories.output, folder),
      isUsed: true,
      twin: null,
    });
    for (const file of others) writer.write(file);
  });
}
