import type { VariantPage } from "../../shared/pages/variant/variant-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export function variantTemplate(page: VariantPage, site: PageSite): Html {
  const { words, link, templates } = site;
  const { variant: say, item: ofItem, family: ofFamily } = words.pages;
  const chapter = templates["parts/chapter"];
  const links = (list: VariantPage["sources"]) => templates["parts/links"](list, site);
  const drawing = (kind: string, svg: string | null) => templates["parts/drawing"]({ kind, svg }, site);
  const particular = (label: string, value: Html | string | null) =>
    value !== null && html`<div><dt>${label}</dt><dd>${value}</dd></div>`;

  return html`<article>
${templates["parts/opening"](
  {
    page,
    below: html`<dl class="particulars">
${particular(say.issued, page.issued)}
${particular(say.family, links([page.family]))}
${particular(say.extends, page.extends && links([page.extends]))}
</dl>
<div class="prose">${markup(page.text)}</div>`,
  },
  site,
)}
${chapter(
  {
    id: "figures",
    title: say.brief,
    note: html`${ofItem.figuresNote} ${page.sightings.counted.join(" ")} <a href="${link(page.sightings.log.address)}">${page.sightings.log.name}</a>`,
    matter: html`${page.conflict && html`<p class="lead"><strong>${page.conflict}</strong></p>`}${templates["parts/figures"](page, site)}`,
  },
  site,
)}
${page.entries.length > 0 && chapter({ id: "items", title: say.items, note: page.comparisons && links([page.comparisons]), matter: html`${templates["parts/entries"]({ groups: [{ variant: null, entries: page.entries }] }, site)}${page.allEntries && html`<p>${links([page.allEntries])}</p>`}${templates["parts/ticked"]({}, site)}` }, site)}
${page.likeness !== null && chapter({ id: "likeness", title: say.likeness, note: html`${ofItem.nearestNote} ${links([...(page.comparisons ? [page.comparisons] : []), page.likenessMethod])}`, matter: drawing("likeness", page.likeness) }, site)}
${chapter({ id: "plan", title: say.plan, note: page.planNote, matter: drawing("plan", page.plan) }, site)}
${page.hazards.length > 0 && chapter({ id: "cautions", title: ofItem.cautions, matter: templates["parts/cautions"](page.hazards, site) }, site)}
${chapter(
  {
    id: "features",
    title: say.features,
    note: html`<a href="${link(page.family.address)}">${ofFamily.comparison}</a>`,
    matter: withRoles(
      html`<table class="features"><thead><tr><th scope="col">${say.feature}</th><th scope="col">${say.found}</th><th scope="col">${say.look}</th></tr></thead><tbody>${page.features.map(
        ({ name, found, look }) =>
          html`<tr><th scope="row">${name}</th><td class="found">${found}</td><td class="look">${look}</td></tr>`,
      )}</tbody></table>`,
    ),
  },
  site,
)}
${chapter({ id: "parts", title: say.parts, note: page.partsNote, matter: templates["parts/issued-table"](page, site) }, site)}
${page.rates !== null && chapter({ id: "rates", title: say.rates, note: html`<a href="${link(page.rateMethod.address)}">${page.rateMethod.name}</a>`, matter: drawing("rates", page.rates) }, site)}
${chapter(
  {
    id: "serials",
    title: say.serials,
    matter:
      page.serials.length === 0
        ? html`<p>${say.noSerials}</p>`
        : html`${drawing("serials", page.serialPlot)}
${templates["parts/serial-table"]({ caption: null, ranges: page.serials }, site)}`,
  },
  site,
)}
${
  page.partSerials.length > 0 &&
  chapter(
    {
      id: "part-serials",
      title: say.partSerials,
      note: say.partSerialsNote,
      matter: html`${page.partSerials.map(({ part, ranges }) => templates["parts/serial-table"]({ caption: part, ranges }, site))}`,
    },
    site,
  )
}
${
  page.levels.length > 0 &&
  chapter(
    {
      id: "levels",
      title: say.levels,
      matter: html`<ol class="levels">${page.levels.map(
        ({ name, needs, figures, parts }) =>
          html`<li><b>${name}</b> <small>${needs}</small>${templates["parts/figures"]({ figures }, site)}<details><summary>${say.levelParts}</summary><p>${links(parts)}</p></details></li>`,
      )}</ol>`,
    },
    site,
  )
}
${page.reallocation && chapter({ id: "completing", title: say.reallocation, note: say.reallocationNote, matter: templates["parts/reallocation"](page.reallocation, site) }, site)}
${page.sightings.plot !== null && chapter({ id: "sightings", title: say.log, note: html`<a href="${link(page.sightings.log.address)}">${page.sightings.log.name}</a>`, matter: drawing("sightings", page.sightings.plot) }, site)}
${chapter(
  {
    id: "sources",
    title: say.sources,
    matter: html`<p>${page.sources.length === 0 ? say.none : links(page.sources)}</p>
<dl class="closing">${page.siblings.length > 0 && html`<div><dt>${say.siblings}</dt><dd>${links(page.siblings)}</dd></div>`}
${templates["parts/cite"](page, site)}</dl>`,
  },
  site,
)}
</article>
`;
}
