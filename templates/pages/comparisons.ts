import { addresses } from "../../shared/pages/addresses/addresses.ts";
import {
  type ComparisonsPage,
  comparedPlace,
  type DistanceTable,
} from "../../shared/pages/compare/comparisons-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

function distances({ caption, rows }: DistanceTable, link: PageSite["link"]): Html {
  return html`<div class="scroll" tabindex="0" role="group" aria-label="${caption}"><table class="distances"><caption class="unseen">${caption}</caption>
<thead><tr><td></td>${rows.slice(0, -1).map(({ number, outfit }) => html`<th scope="col" class="number"><abbr title="${outfit.name}">${number}</abbr></th>`)}</tr></thead>
<tbody>${rows.map(
    ({ number, outfit, cells }) =>
      html`<tr><th scope="row"><span class="place">${number}</span> <a href="${link(outfit.address)}">${outfit.name}</a></th>${cells.map(
        ({ pair, likeness, comparedOn }) =>
          html`<td class="number"><a href="${link(pair.address)}">${likeness}<span class="unseen"> ${pair.name}</span></a> <small>${comparedOn}</small></td>`,
      )}${rows.slice(cells.length + 1).map(() => html`<td></td>`)}</tr>`,
  )}</tbody></table></div>`;
}

export function comparisonsTemplate(page: ComparisonsPage, site: PageSite): Html {
  const { words, link, templates } = site;
  const { compare: say, finder } = words.pages;
  const chapter = templates["parts/chapter"];
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${say.lead}</p>` }, site)}
${templates["parts/no-answer"](say.noAnswer)}
<section class="composed" tabindex="-1" data-home="${link("/")}" aria-label="${say.sideBySide}" hidden><p class="small"><output class="told-composed">${say.loading}</output> <a href="${link(addresses.items)}">${say.addMore}</a></p><div class="composed-tables"></div></section>
<div class="comparable">
${
  page.variants.length === 0
    ? html`<p>${say.none}</p>`
    : html`<p class="to-read">${say.distancesNote}</p>${page.variants.map(
        ({ id, variant, distances: table, many }) =>
          chapter(
            {
              id: comparedPlace(id),
              title: variant.name,
              note: html`<a href="${link(variant.address)}">${words.pages.item.reference}</a>`,
              matter: html`${table && distances(table, link)}
${
  many &&
  html`<p>${many.note} <a href="${link(many.list.address)}">${many.list.name}</a>.</p>
${
  many.pairs.length > 0 &&
  html`<h3>${say.nearestPairs}</h3><ul class="contents">${many.pairs.map(({ address, name, likeness }) => html`<li><span class="contents-name"><a href="${link(address)}">${name}</a></span> <span class="leader"></span> <span class="contents-figure">${likeness}</span></li>`)}</ul><p class="small">${say.thinLast}</p>`
}`
}`,
            },
            site,
          ),
      )}`
}
</div>
${chapter(
  {
    id: "any",
    title: say.anyOutfits,
    matter: html`<p>${say.anyNote} <a href="${link(addresses.items)}">${finder.outfits}</a>.</p><p class="small">${page.limit}</p>`,
  },
  site,
)}
`;
}
