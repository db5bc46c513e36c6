import type { NearestView } from "../../shared/pages/item/item-completing.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function nearest(list: readonly NearestView[], { words, link }: PageSite): Html {
  const say = words.pages.item;
  return html`<table class="wants"><caption>${say.nearest}</caption>
<thead><tr><th scope="col">${say.example}</th><th scope="col" class="number">${say.likeness}</th><th scope="col" class="number">${say.comparedOn}</th></tr></thead><tbody>${list.map(
    ({ example, likeness, compared, beside }) =>
      html`<tr><th scope="row"><a href="${link(example.address)}">${example.name}</a>${beside && html` <small><a href="${link(beside.address)}">${beside.name}<span class="unseen">: ${example.name}</span></a></small>`}</th><td class="number">${likeness}</td><td class="number">${compared}</td></tr>`,
  )}</tbody></table>
<p class="small">${say.nearestNote} ${words.pages.compare.thinLast}</p>`;
}
