import { addresses } from "../../shared/pages/addresses/addresses.ts";
import type { ItemPage } from "../../shared/pages/item/item-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What was observed, against every variant of the family; and where to look next, after the cautions. */
export function itemEvidence({ identity }: ItemPage, site: PageSite): Html {
  const { words, link, templates } = site;
  const say = words.pages.item;
  return templates["parts/chapter"](
    {
      id: "identification",
      title: say.identification,
      note: html`<a href="${link(addresses.method("identification"))}">${words.pages.methods.title}</a>`,
      matter: html`<p class="lead">${identity.sentence}</p>
${identity.against.length > 0 && html`<ul class="against">${identity.against.map((each) => html`<li>${each}</li>`)}</ul>`}
${identity.caveats.map((each) => html`<p>${each}</p>`)}
<table class="observed">
<thead><tr><th scope="col">${words.pages.variant.feature}</th><th scope="col">${say.observed}</th><th scope="col">${say.expected}</th></tr></thead>
<tbody>${identity.observed.map(
        ({ name, value, expected, contradicts }) =>
          html`<tr${contradicts && html` class="contradicts"`}><th scope="row">${name}</th><td>${value ?? html`<i>${say.notObserved}</i>`}</td><td>${expected || "—"}</td></tr>`,
      )}</tbody>
</table>
<table class="candidates">
<caption>${say.candidates}</caption>
<thead><tr><th scope="col">${say.candidate}</th><th scope="col">${say.speaksAgainst}</th></tr></thead>
<tbody>${identity.candidates.map(
        ({ variant, against }) =>
          html`<tr><th scope="row"><a href="${link(variant.address)}">${variant.name}</a></th><td>${against.length === 0 ? html`<i>${say.nothingAgainst}</i>` : against.join(", ")}</td></tr>`,
      )}</tbody>
</table>
${
  identity.lookNext.length > 0 &&
  html`<h3>${say.lookNext}</h3><p class="small">${say.lookNextNote}</p><ol class="look-next">${identity.lookNext.map(
    ({ name, look, effort }) =>
      html`<li><b>${name}</b>${effort !== null && html`, <i>${effort}</i>`}${look && html`<p>${look}</p>`}</li>`,
  )}</ol>`
}`,
    },
    site,
  );
}
