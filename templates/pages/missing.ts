import type { NotFoundPage } from "../../shared/pages/collection/not-found-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function missingTemplate(page: NotFoundPage, site: PageSite): Html {
  const { templates, words } = site;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${page.text}</p>` }, site)}
<p>${words.pages.missing.ways}: ${templates["parts/links"](page.ways, site)}</p>
`;
}
