import { relativeAddress, rootedAddress } from "../shared/pages/addresses/relative-address.ts";
import type { Page } from "../shared/pages/site-pages.ts";
import { Html, html, markup } from "./html.ts";
import type { PageSite, Site } from "./site.ts";
import type { Templates } from "./templates.ts";

export type { Site } from "./site.ts";

type AnyTemplate = (view: never, site: PageSite) => Html | string;

const checkedTemplates = new WeakMap<Templates, Templates>();

/** A template of the user's own may return a plain string: it is markup all the same. */
function checked(templates: Templates): Templates {
  const known = checkedTemplates.get(templates);
  if (known) return known;
  const all = Object.fromEntries(
    Object.entries(templates as Readonly<Record<string, AnyTemplate>>).map(([name, template]) => [
      name,
      (view: never, site: PageSite) => {
        const written = template(view, site);
        return written instanceof Html ? written : markup(String(written));
      },
    ]),
  ) as unknown as Templates;
  checkedTemplates.set(templates, all);
  return all;
}

const siteOf = (page: Page, site: Site): PageSite => ({
  ...site,
  templates: checked(site.templates),
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
