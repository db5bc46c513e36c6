import type { ReallocationView } from "../../shared/pages/variant-completing.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Spare parts that would complete another outfit of the same variant. */
export function reallocation({ moves, items }: ReallocationView, { words, link }: PageSite): Html {
  const say = words.pages.variant;
  return html`<table class="moves"><thead><tr><th scope="col">${say.moved}</th><th scope="col" class="number">${say.movedUnits}</th><th scope="col">${say.movedFrom}</th><th scope="col">${say.movedTo}</th></tr></thead><tbody>${moves.map(
    ({ part, units, from, to }) =>
      html`<tr><th scope="row"><a href="${part.address}">${part.name}</a></th><td class="number">${units}</td><td><a href="${link(from.address)}">${from.name}</a></td><td><a href="${link(to.address)}">${to.name}</a></td></tr>`,
  )}</tbody></table>
<dl class="figures plain">${items.map(
    ({ item, before, after }) =>
      html`<div><dt><a href="${link(item.address)}">${item.name}</a></dt><dd>${say.wouldRise(before, after)}</dd></div>`,
  )}</dl>`;
}
