import { relativeAddress, rootedAddress } from "../shared/pages/addresses/relative-address.ts";
import type { Page } from "../shared/pages/site-pages.ts";
import { type Html, html, markup } from "./html.ts";
import type { PageSite, Site } from "./site.ts";

export type { Site } from "./site.ts";

const siteOf = (page: Page, site: Site): PageSite => ({
  ...site,
  page,
  link: (address) =>
    page.kind === "missing"
      ? rootedAddress(site.settings.url, address)
      : relativeAddress(page.address, address),
  html,
  markup,
});

function bodyOf(page: Page, site: PageSite): Html {
  const template = site.templates[`pages/${page.kind}`] as (view: Page, site: PageSite) => Html;
  return template(page, site);
}

/**
 * What stands inside main, for use within somebody else's layout: in an element of our own, to which our styles
 * are confined and which has what the body of our own layout has.
 */
export function renderBody(page: Page, site: Site): string {
  const body = bodyOf(page, siteOf(page, site));
  return html`<div class="fittedcase page-${page.kind}" lang="${site.settings.language}">
${body}
</div>`.text;
}

/** What such a layout needs in its head, for our pages to look and work as they do in ours. */
export function renderHead(page: Page, site: Site): string {
  const own = siteOf(page, site);
  return own.templates["parts/page-head"](page, own).text;
}

/** The whole document. */
export function renderPage(page: Page, site: Site): string {
  const own = siteOf(page, site);
  return own.templates["layouts/page"]({ page, body: bodyOf(page, own) }, own).text;
}
