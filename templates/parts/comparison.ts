import type { ComparisonLine, ComparisonTable } from "../../shared/pages/family/family-page.ts";
import type { Link } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Comparison {
  readonly variants: readonly Link[];
  readonly table: ComparisonTable;
}

/** Variants side by side. Wider than a small screen, it scrolls within itself. */
export function comparison({ variants, table }: Comparison, { words, link }: PageSite): Html {
  const say = words.pages.family;
  const body = (title: string, lines: readonly ComparisonLine[]) =>
    lines.length > 0 &&
    html`<tbody><tr class="group"><th scope="rowgroup" colspan="${variants.length + 1}">${title}</th></tr>${lines.map(
      ({ name, cells }) =>
        html`<tr><th scope="row">${name}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`,
    )}</tbody>`;
  return html`<div class="scroll" tabindex="0" role="group" aria-label="${say.comparison}"><table class="comparison">
<thead><tr><th scope="col">${say.row}</th>${variants.map(({ address, name }) => html`<th scope="col"><a href="${link(address)}">${name}</a></th>`)}</tr></thead>
${body(say.featuresOf, table.features)}
${body(say.partsOf, table.parts)}
</table></div>`;
}
