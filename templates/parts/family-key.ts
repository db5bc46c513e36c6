import type { FamilyKeyView } from "../../shared/pages/family/family-key-view.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** A printed key: numbered questions, each answer with the number of the next or the variant that is left. */
export function familyKey(
  { bySerial, questions, sets: [first, ...others], proof, unseparated }: FamilyKeyView,
  site: PageSite,
): Html {
  const say = site.words.pages.family;
  return html`${bySerial !== null && html`<p>${bySerial}</p>`}${
    first !== undefined &&
    html`<p>${say.smallest} ${first}. ${proof.join(" ")}</p>
${
  others.length > 0 &&
  html`<details class="common"><summary>${say.otherSets(others.length)}</summary><ul>${others.map((set) => html`<li>${set}</li>`)}</ul></details>`
}`
  }
<ol class="key">${questions.map(
    ({ number, feature, answers }) => html`<li id="key-${number}">
<p><a href="${feature.address}">${feature.name}</a></p>
<ul>${answers.map(
      ({ values, next, variants }) =>
        html`<li><span>${values}</span> <span class="leader"></span> <span class="key-end">${
          next === null
            ? site.templates["parts/links"](variants, site)
            : html`<a href="#key-${next}">${next}</a>`
        }</span></li>`,
    )}</ul>
</li>`,
  )}</ol>
${unseparated.length > 0 && html`<p class="small">${say.unseparated}: ${unseparated.join("; ")}.</p>`}`;
}
