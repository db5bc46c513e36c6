import type { HazardView } from "../../shared/pages/views/hazard-view.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What can hurt, the usual caution, and where it is published. */
export function cautions(hazards: readonly HazardView[], site: PageSite): Html {
  const say = site.words.pages.item;
  return html`<p class="lead">${say.cautionsNote}</p>
<dl class="cautions">${hazards.map(
    ({ id, name, caution, source, url, concerns }) => html`<div id="caution-${id}">
<dt>${name}</dt>
<dd><p>${caution}</p>${
      concerns.length > 0 &&
      html`<p class="small">${say.concerns}: ${site.templates["parts/links"](concerns, site)}</p>`
    }<p class="small">${url === null ? source : html`<a href="${url}">${source}</a>`}</p></dd>
</div>`,
  )}</dl>`;
}
