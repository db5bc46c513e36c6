import type { SightingsPage } from "../../shared/pages/variant/sightings-page.ts";
import { type Html, html, joined } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export function sightingsTemplate(page: SightingsPage, site: PageSite): Html {
  const { templates, words, link } = site;
  const say = words.pages.sightings;
  return html`${templates["parts/opening"](
    {
      page,
      below: html`<p class="lead"><a href="${link(page.variant.address)}">${say.toVariant}</a>. ${say.itemsToo} ${page.watching}</p>`,
    },
    site,
  )}
${templates["parts/drawing"]({ kind: "sightings", svg: page.plot }, site)}
${
  page.rows.length === 0
    ? html`<p>${say.none}</p>`
    : html`${withRoles(html`<table class="log"><caption>${say.caption}</caption>
<thead><tr><th scope="col">${say.seen}</th><th scope="col">${say.example}</th><th scope="col">${say.kind}</th><th scope="col">${say.state}</th><th scope="col">${say.condition}</th>${page.hasPrices && html`<th scope="col" class="number">${say.price}</th>`}<th scope="col">${say.source}</th></tr></thead>
<tbody>${page.rows.map(
        (
          row,
        ) => html`<tr><th scope="row">${row.seen}</th><td data-label="${say.example}">${row.example ? templates["parts/links"]([row.example], site) : html`<i>${say.unnamed}</i>`}${row.named !== null && html` <small>${row.named}</small>`}</td><td>${row.kind}</td><td class="there">${joined(
          row.contents.map(({ how, parts }) => html`<i>${how}</i> ${parts}`),
          "; ",
        )}${row.remarks !== "" && html`<small>${row.remarks}</small>`}</td><td data-label="${say.condition}">${row.condition}</td>${page.hasPrices && html`<td class="number" data-label="${say.price}">${row.price}</td>`}<td>${row.source && templates["parts/links"]([row.source], site)}${row.list !== null && html` <small>${row.list}</small>`}</td></tr>
`,
      )}</tbody></table>`)}
${page.pager && templates["parts/pager"](page.pager, site)}
${page.hasPrices && html`<p class="small">${say.prices}</p>`}`
}
`;
}
