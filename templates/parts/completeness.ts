import type { CompletenessView } from "../../shared/pages/views/completeness-view.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What is certainly there and what may be, by weight and by count, and the level that it comes to. */
export function completeness(view: CompletenessView, site: PageSite): Html {
  const say = site.words.pages.completeness;
  const row = (label: string, value: string | null) =>
    value !== null && html`<div><dt>${label}</dt><dd>${value}</dd></div>`;
  if (view.weighted === null) return html`<p>${view.none}</p>`;
  return html`${site.templates["parts/drawing"]({ kind: "interval", svg: view.plot }, site)}
<dl class="figures plain">
${row(say.weighted, view.weighted)}
${row(say.counted, view.counted)}
${row(say.level, view.level)}
${row(say.consumables, view.consumable)}
${row(say.optional, view.optional)}
</dl>
<p class="small"><span class="weight-means">${say.weightMeans}</span>${(view.consumable !== null || view.optional !== null) && ` ${say.apart}`}</p>`;
}
