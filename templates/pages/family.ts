import type { FamilyPage } from "../../shared/pages/family/family-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export function familyTemplate(page: FamilyPage, site: PageSite): Html {
  const { words, link, templates } = site;
  const { family: say, item: ofItem } = words.pages;
  const chapter = templates["parts/chapter"];
  const { made: asMade, survivors: asSurviving } = words.figures.variant;
  const isAlone = page.variants.length < 2;
  const figure = (label: string, view: FamilyPage["known"][number]["made"]) =>
    templates["parts/figure"]({ label, figure: view }, site);
  return html`<article>
${templates["parts/opening"](
  {
    page,
    below: html`${page.maker !== null && html`<dl class="particulars"><div><dt>${say.maker}</dt><dd>${page.maker}</dd></div></dl>`}
<div class="prose">${markup(page.text)}</div>`,
  },
  site,
)}
${chapter(
  {
    id: "known",
    title: say.known,
    matter: withRoles(
      html`<table class="known"><thead><tr><th scope="col">${say.variant}</th><th scope="col">${say.issued}</th><th scope="col">${asMade}</th><th scope="col">${asSurviving}</th><th scope="col" class="number">${say.seen}</th><th scope="col" class="number">${say.here}</th></tr></thead><tbody>${page.known.map(
        ({ variant, issued, made, survivors, sightings, here }) =>
          html`<tr><th scope="row"><a href="${link(variant.address)}">${variant.name}</a></th><td data-label="${say.issued}">${issued ?? "—"}</td><td data-label="${asMade}">${figure(`${asMade}, ${variant.name}`, made)}</td><td data-label="${asSurviving}">${figure(`${asSurviving}, ${variant.name}`, survivors)}</td><td class="number" data-label="${say.seen}"><a href="${link(sightings.address)}">${sightings.name}</a></td><td class="number" data-label="${say.here}">${here}</td></tr>`,
      )}</tbody></table>`,
    ),
  },
  site,
)}
${chapter(
  {
    id: "comparison",
    title: isAlone ? say.alone : say.comparison,
    note: isAlone ? null : say.differs,
    matter: isAlone
      ? templates["parts/comparison"]({ variants: page.variants, table: page.common }, site)
      : html`${templates["parts/comparison"]({ variants: page.variants, table: page.differing }, site)}
${page.commonTitle !== null && html`<details class="common"><summary>${page.commonTitle}</summary>${templates["parts/comparison"]({ variants: page.variants, table: page.common }, site)}</details>`}`,
  },
  site,
)}
${page.hazards.length > 0 && chapter({ id: "cautions", title: ofItem.cautions, matter: templates["parts/cautions"](page.hazards, site) }, site)}
${page.key && (page.key.questions.length > 0 || page.key.bySerial !== null) && chapter({ id: "key", title: say.key, note: say.keyNote, matter: templates["parts/family-key"](page.key, site) }, site)}
${page.serialPlot !== null && chapter({ id: "serials", title: words.pages.variant.serials, note: isAlone ? null : say.serialsNote, matter: templates["parts/drawing"]({ kind: "serials", svg: page.serialPlot }, site) }, site)}
${chapter(
  {
    id: "features",
    title: say.features,
    matter: html`<dl class="feature-notes">${page.features.map(
      ({ id, name, values, look, effort, note }) =>
        html`<div id="feature-${id}"><dt>${name}</dt><dd><p><i>${values}</i>; ${effort}.</p>${look && html`<p>${look}</p>`}${note && html`<p class="small">${note}</p>`}</dd></div>`,
    )}</dl>`,
  },
  site,
)}
${chapter(
  {
    id: "sources",
    title: say.sources,
    matter: html`<p>${page.sources.length === 0 ? words.pages.variant.none : templates["parts/links"](page.sources, site)}</p>
<dl class="closing">${templates["parts/cite"](page, site)}</dl>`,
  },
  site,
)}
</article>
`;
}
