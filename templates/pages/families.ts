import type { FamiliesPage } from "../../shared/pages/family/family-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

export function familiesTemplate(page: FamiliesPage, site: PageSite): Html {
  const { templates, link } = site;
  return html`${templates["parts/opening"]({ page }, site)}
${page.families.map(({ id, family, maker, text, variants }) =>
  templates["parts/chapter"](
    {
      id,
      title: family.name,
      note: maker,
      matter: html`<div class="prose">${markup(text)}</div>
<p><a href="${link(family.address)}">${site.words.pages.family.comparison}</a></p>
<ul class="contents">${variants.map(
        ({ variant, issued }) =>
          html`<li><a href="${link(variant.address)}">${variant.name}</a> <span class="leader"></span> <span>${issued}</span></li>`,
      )}</ul>`,
    },
    site,
  ),
)}
`;
}
