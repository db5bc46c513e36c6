import type { ReallocationView } from "../../shared/pages/variant/variant-completing.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Spare parts that would complete another outfit of the same variant. */
export function reallocation({ moves, items }: ReallocationView, { words, link }: PageSite): Html {
  const say = words.pages.variant;
  const outfit = ({ address, name }: ReallocationView["items"][number]["item"]) =>
    html`<a href="${link(address)}">${name}</a>`;
  return html`<table class="moves"><thead><tr><th scope="col">${say.moved}</th><th scope="col" class="number">${say.movedUnits}</th><th scope="col">${say.movedFrom}</th><th scope="col">${say.movedTo}</th></tr></thead><tbody>${moves.map(
    ({ part, units, from, to }) =>
      html`<tr><th scope="row"><a href="${part.address}">${part.name}</a></th><td class="number">${units}</td><td>${outfit(from)}</td><td>${outfit(to)}</td></tr>`,
  )}</tbody></table>
${
  items.length > 0 &&
  html`<dl class="figures plain">${items.map(
    ({ item, before, after }) =>
      html`<div><dt>${outfit(item)}</dt><dd>${say.wouldRise(before, after)}</dd></div>`,
  )}</dl>`
}`;
}
