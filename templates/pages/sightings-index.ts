import type { SightingsIndexPage } from "../../shared/pages/variant/sightings-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export function sightingsIndexTemplate(page: SightingsIndexPage, site: PageSite): Html {
  const { templates, words, link } = site;
  const say = words.pages.sightings;
  const known = words.figures.variant.coverage;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${say.lead}</p>` }, site)}
${withRoles(html`<table class="logs"><thead><tr><th scope="col">${say.variant}</th><th scope="col" class="number">${say.count}</th><th scope="col" class="number">${say.distinct}</th><th scope="col" class="number">${say.once}</th><th scope="col" class="number">${say.twice}</th><th scope="col">${known}</th></tr></thead>
<tbody>${page.variants.map(
  ({ log, sightings, distinct, once, twice, coverage }) =>
    html`<tr><th scope="row"><a href="${link(log.address)}">${log.name}</a></th><td class="number" data-label="${say.count}">${sightings}</td><td class="number" data-label="${say.distinct}">${distinct}</td><td class="number" data-label="${say.once}">${once}</td><td class="number" data-label="${say.twice}">${twice}</td><td data-label="${known}">${templates["parts/figure"]({ label: `${known}, ${log.name}`, figure: coverage }, site)}</td></tr>`,
)}</tbody></table>`)}
<p class="small">${say.counted} ${page.watching}</p>
`;
}
