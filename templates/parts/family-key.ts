import type { FamilyKeyView } from "../../shared/pages/family-key-view.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** A printed key: numbered questions, each answer with the number of the next or the variant that is left. */
export function familyKey({ questions, sets, notProven, unseparated }: FamilyKeyView, site: PageSite): Html {
  const say = site.words.pages.family;
  return html`${
    sets.length > 0 &&
    html`<p>${say.smallest} ${sets.join(`; ${say.alternatives} `)}. ${notProven && say.notProven}</p>`
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
