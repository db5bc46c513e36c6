import type { FigureView } from "../../shared/pages/figure-view.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What a figure rests on: method, inputs, interval, sources, and what to bear in mind. */
export function evidence(view: FigureView, site: PageSite): Html {
  const { words, link, templates } = site;
  const say = words.pages.figure;
  const row = (name: string, value: Html | string) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;
  return html`<dl class="evidence">
${row(say.method, html`<a href="${link(view.method.address)}">${view.method.name}</a>`)}
${view.inputs.length > 0 && row(say.from, html`<ul class="inputs">${view.inputs.map(({ name, value }) => html`<li>${name} <b>${value}</b></li>`)}</ul>`)}
${view.confidence !== null && row(say.interval(view.confidence), view.phrase)}
${view.sources.length > 0 && row(say.sources, templates["parts/links"](view.sources, site))}
${view.caveats.length > 0 && row(say.caveats, html`${view.caveats.map((caveat) => html`<p>${caveat}</p>`)}`)}
</dl>`;
}
