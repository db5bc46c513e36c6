import type { ComparePage } from "../../shared/pages/compare/compare-page.ts";
import { keptNumbers } from "../../shared/pages/views/kept-numbers.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Two outfits: how alike, what each is, what differs; the rest one click away. */
export function comparisonTemplate(page: ComparePage, site: PageSite): Html {
  const { words, link, templates } = site;
  const { compare: say, item: ofItem } = words.pages;
  const { table, likeness } = page;
  const chapter = templates["parts/chapter"];
  const [first, second] = table.outfits;
  const rows = (label: string, of: typeof table.differs) =>
    templates["parts/beside"]({ label, outfits: table.outfits, rows: of }, site);
  const further = (summary: string, of: typeof table.differs) =>
    of.count > 0 && html`<details class="common"><summary>${summary}</summary>${rows(summary, of)}</details>`;
  return html`<article>
<header class="opening">
${templates["parts/trail"](page, site)}
<h1 class="pair"><span>${first && keptNumbers(first.name)}</span> <small>${say.beside}</small> <span>${second && keptNumbers(second.name)}</span></h1>
<p class="held"><a href="${link(page.variant.address)}">${page.variant.name}</a></p>
</header>
${chapter(
  {
    id: "brief",
    title: say.sideBySide,
    // The small plans are for the eye; what differs in them stands in words below.
    matter: html`<div class="scroll" tabindex="0" role="group" aria-label="${say.sideBySide}"><table class="beside brief"><thead><tr><th scope="col">${say.outfit}</th>${table.outfits.map(({ address, name }) => html`<th scope="col"><a href="${link(address)}">${name}</a></th>`)}</tr></thead><tbody><tr class="plans" aria-hidden="true"><th scope="row">${ofItem.plan}</th>${page.plans.map((plan) => html`<td>${markup(plan)}</td>`)}</tr>${table.brief.map(
      ({ name, cells }) =>
        html`<tr><th scope="row">${name}</th>${cells.map((text) => html`<td>${text}</td>`)}</tr>`,
    )}</tbody></table></div>`,
  },
  site,
)}
${chapter(
  {
    id: "likeness",
    title: say.likeness,
    note: html`<a href="${link(likeness.method.address)}">${likeness.method.name}</a>`,
    matter: html`<p class="lead">${words.pages.capital(likeness.phrase)}</p>
${
  likeness.basis !== null &&
  html`<p>${likeness.basis}</p><details><summary class="small">${say.compared}</summary><dl class="closing"><div><dt>${say.comparedFeatures}</dt><dd>${likeness.features}</dd></div><div><dt>${say.comparedParts}</dt><dd>${likeness.parts}</dd></div></dl></details>`
}`,
  },
  site,
)}
${chapter(
  {
    id: "differs",
    title: say.differs,
    note: say.differsNote,
    matter: html`${table.differs.count === 0 ? html`<p>${say.differsNone}</p>` : rows(say.differs, table.differs)}
${further(say.unknown(table.unknown.count), table.unknown)}
${further(say.alike(table.alike.count), table.alike)}`,
  },
  site,
)}
${
  page.others.length > 0 &&
  chapter(
    {
      id: "others",
      title: say.others,
      matter: html`<ul class="contents">${page.others.map(({ address, name }) => html`<li><a href="${link(address)}">${name}</a></li>`)}</ul>`,
    },
    site,
  )
}
</article>
`;
}
