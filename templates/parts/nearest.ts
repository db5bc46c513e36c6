import type { NearestView } from "../../shared/pages/item-completing.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function nearest(list: readonly NearestView[], { words, link }: PageSite): Html {
  const say = words.pages.item;
  const hasEntry = list.some(({ beside }) => beside !== null);
  return html`<table class="wants"><caption>${say.nearest}</caption>
<thead><tr><th scope="col">${say.example}</th><th scope="col" class="number">${say.likeness}</th><th scope="col" class="number">${say.comparedOn}</th>${hasEntry && html`<th scope="col"><span class="unseen">${words.pages.compare.sideBySide}</span></th>`}</tr></thead><tbody>${list.map(
    ({ example, likeness, compared, beside }) =>
      html`<tr><th scope="row"><a href="${link(example.address)}">${example.name}</a></th><td class="number">${likeness}</td><td class="number">${compared}</td>${hasEntry && html`<td>${beside && html`<a href="${link(beside.address)}">${beside.name}<span class="unseen">: ${example.name}</span></a>`}</td>`}</tr>`,
  )}</tbody></table>
<p class="small">${say.nearestNote}</p>`;
}
