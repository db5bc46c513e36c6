import type { ItemTable } from "../../shared/pages/prose/item-table.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Outfits side by side. Wider than a small screen, the table scrolls within itself. */
export function itemTable({ columns, rows }: ItemTable, { words, link }: PageSite): Html {
  const say = words.pages.catalogue;
  return html`<div class="scroll" tabindex="0" role="group" aria-label="${words.pages.articles.outfits(rows.length)}"><table class="chosen">
<thead><tr><th scope="col">${say.outfit}</th>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
<tbody>${rows.map(
    ({ item, cells }) =>
      html`<tr><th scope="row"><a href="${link(item.address)}">${item.name}</a></th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`,
  )}</tbody>
</table></div>`;
}
