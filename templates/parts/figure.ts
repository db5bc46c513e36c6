import type { LabelledFigure } from "../../shared/pages/variant/variant-rarity.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** A figure: readable first, and opening in place to what it rests on. */
export function figure(
  { label, figure: view }: Pick<LabelledFigure, "label" | "figure">,
  site: PageSite,
): Html {
  const { words, link, templates } = site;
  const say = words.pages.figure;
  const row = (name: string, value: Html | string) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;
  return html`<details class="figure${!view.isKnown && " withheld"}">
<summary><span class="phrase">${view.isKnown ? view.phrase : say.notKnown}</span> <span class="basis">${say.basis}<span class="unseen">: ${label}</span></span>${[view.withheld, view.doubt].map((reason) => reason !== null && html`<span class="reason">${reason}</span>`)}</summary>
<dl class="evidence">
${row(say.method, html`<a href="${link(view.method.address)}">${view.method.name}</a>`)}
${view.inputs.length > 0 && row(say.from, html`<ul class="inputs">${view.inputs.map(({ name, value }) => html`<li>${name} <b>${value}</b></li>`)}</ul>`)}
${view.confidence !== null && row(say.interval(view.confidence), view.phrase)}
${view.sources.length > 0 && row(say.sources, templates["parts/links"](view.sources, site))}
${view.caveats.length > 0 && row(say.caveats, html`${view.caveats.map((caveat) => html`<p>${caveat}</p>`)}`)}
${view.changes !== undefined && row(say.changes, view.changes)}
</dl>
</details>`;
}
