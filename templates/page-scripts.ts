import type { Page } from "../shared/pages/site-pages.ts";

/** On which pages a script runs; one that is not named here runs on all of them. */
const runsOn: Readonly<Record<string, (page: Page) => boolean>> = {
  "asked-address": (page) =>
    page.kind === "comparisons" || (page.kind === "catalogue" && page.finder !== null),
  "search-catalogue": (page) => page.kind === "catalogue" && page.finder !== null,
  "tick-outfits": ({ kind }) => kind === "catalogue" || kind === "variant",
  "open-basis": ({ kind }) => kind === "article",
  "look-closely": (page) => page.kind === "item" && page.photos.length > 0,
  "play-moments": (page) => page.kind === "item" && page.recording !== null,
  "compare-outfits": ({ kind }) => kind === "comparisons",
};

export const scriptRunsOn = (name: string, page: Page): boolean =>
  Object.hasOwn(runsOn, name) ? (runsOn[name]?.(page) ?? false) : true;

/** What says something once it is asked to, in the words of the site. */
const speaks: ReadonlySet<string> = new Set(["search-catalogue", "tick-outfits", "compare-outfits"]);

export const scriptSpeaks = (name: string): boolean => speaks.has(name);

/** What must have run before the first line is shown; a browser that cannot wait runs it when it comes. */
const runsFirst: ReadonlySet<string> = new Set(["asked-address"]);

export const scriptRunsFirst = (name: string): boolean => runsFirst.has(name);
