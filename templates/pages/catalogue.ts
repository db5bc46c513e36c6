import type { CataloguePage } from "../../shared/pages/catalogue-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function catalogueTemplate(page: CataloguePage, site: PageSite): Html {
  const { words, templates } = site;
  const say = words.pages.catalogue;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${page.lead}</p>` }, site)}
${
  page.groups.length > 0 &&
  html`<div class="catalogue" data-filter="${say.filter}" data-none="${say.filterNone}">
${templates["parts/entries"]({ groups: page.groups }, site)}
</div>
<p class="small">${say.rankNote}</p>`
}
<p class="small">${words.pages.site.data}: ${templates["parts/links"](page.files, site)}</p>
`;
}
