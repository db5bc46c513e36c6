import type { ComparedCell, ComparedRow, ComparedRows } from "../../shared/pages/compare/compare-rows.ts";
import type { Link } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Beside {
  readonly label: string;
  readonly outfits: readonly Link[];
  readonly rows: ComparedRows;
}

const cellText = ({ text, units, notes, state }: ComparedCell): Html =>
  html`<td${state && html` class="state-${state}"`}><span class="is">${text}</span>${units !== null && html` <span class="units">${units}</span>`}${notes && html`<small>${notes}</small>`}</td>`;

/** Outfits side by side, features before parts. Wider than a small screen, it scrolls within itself. */
export function beside({ label, outfits, rows }: Beside, { words, link }: PageSite): Html {
  const say = words.pages.compare;
  const body = (title: string, lines: readonly ComparedRow[]) =>
    lines.length > 0 &&
    html`<tbody><tr class="group"><th scope="rowgroup" colspan="${outfits.length + 1}">${title}</th></tr>${lines.map(
      ({ name, cells }) => html`<tr><th scope="row">${name}</th>${cells.map(cellText)}</tr>`,
    )}</tbody>`;
  return html`<div class="scroll" tabindex="0" role="group" aria-label="${label}"><table class="beside">
<thead><tr><th scope="col">${say.row}</th>${outfits.map(({ address, name }) => html`<th scope="col"><a href="${link(address)}">${name}</a></th>`)}</tr></thead>
${body(say.features, rows.features)}
${body(say.parts, rows.parts)}
</table></div>`;
}
