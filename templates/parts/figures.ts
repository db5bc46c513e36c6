import type { ClassView, LabelledFigure } from "../../shared/pages/variant/variant-rarity.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface FigureList {
  readonly figures: readonly LabelledFigure[];
  readonly class?: ClassView | null;
}

export function figures({ figures: list, class: classed }: FigureList, site: PageSite): Html {
  return html`<dl class="figures">
${list.map(
  (each) =>
    html`<div id="${each.id}"><dt>${each.label}</dt><dd>${site.templates["parts/figure"](each, site)}</dd></div>`,
)}
${
  classed &&
  html`<div id="class"><dt>${site.words.pages.variant.class}</dt><dd><span class="phrase">${classed.phrase}</span> <span class="reason">${classed.scale}</span></dd></div>`
}
</dl>`;
}
