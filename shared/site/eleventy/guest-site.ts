import type { OutputFile } from "../../pages/data/output-file.ts";
import { named } from "../assets/script-files.ts";
import { confinedStyle } from "./confined-style.ts";

/** Where and how a site stands as a part of somebody else's. */
export interface GuestSite {
  /** A layout of theirs around our pages, by the name that Eleventy knows it by. */
  readonly layout?: string | undefined;
  /** The address below which our pages stand, such as "/cases/"; the root where unsaid. */
  readonly at?: string | undefined;
}

/** What speaks for a whole host, and is not for a guest to say: response headers, and the page of what is missing. */
const ofTheHost = new Set(["/_headers", "/.htaccess", "/404.html"]);

export const isOfTheHost = (address: string): boolean => ofTheHost.has(address);

/**
 * The address of a folder of the site, with a slash at each end.
 * Throws where it is no such address, so that nothing is written outside of the site.
 */
export function mountAddress(at: string): string {
  const bare = at.replace(/^\/|\/$/g, "");
  if (bare === "") return "/";
  if (!/^(?:[\p{L}\p{N}_~-]+\/)*[\p{L}\p{N}_~-]+$/u.test(bare)) {
    throw new Error(`Found at: "${at}"; expected an address such as "/cases/".`);
  }
  return `/${bare}/`;
}

/**
 * Our styles for our own pages only, and in a layer of their own, over which every rule of the host's stands,
 * whatever its selector.
 */
export const belowTheirs = (style: string): OutputFile =>
  named("style-below", "css", `@layer fittedcase {\n${confinedStyle(style)}\n}\n`);
