import type { Link } from "../../shared/pages/page.ts";
import type { PartGroup, PartRow, RateView } from "../../shared/pages/views/item-parts.ts";
import { type Html, html, joined } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export interface PartsTable {
  readonly groups: readonly PartGroup[];
  readonly rateMethod: Link;
}

/** The list of parts of one example: the line that a compartment of the case plan leads to. */
export function partsTable({ groups, rateMethod }: PartsTable, site: PageSite): Html {
  const { words, link } = site;
  const say = words.pages.item;
  return html`${withRoles(html`<table class="parts">
<thead><tr><th scope="col">${say.part}</th><th scope="col">${say.state}</th><th scope="col" class="number">${say.units}</th><th scope="col">${say.marks}</th><th scope="col">${say.remarks}</th><th scope="col" class="number" colspan="2">${say.recorded}</th></tr></thead>
${groups.map(
  ({ name, rows }) => html`<tbody>
${name && html`<tr class="group"><th scope="rowgroup" colspan="7">${name}</th></tr>`}
${rows.map((row) => site.templates["parts/part-row"](row, site))}
</tbody>`,
)}
</table>`)}
<p class="small">${say.recordedNote} <a href="${link(rateMethod.address)}">${rateMethod.name}</a>.</p>`;
}

export function partRow(row: PartRow, site: PageSite): Html {
  const say = site.words.pages.item;
  return html`<tr id="part-${row.id}" class="state-${row.summary}">
<th scope="row">${row.name}${row.standing && html` <small>${row.standing}</small>`}</th>
<td class="state">${row.state}</td>
<td class="number units" data-label="${say.units}">${row.units}</td>
<td class="marks"${row.marks.length > 0 && html` data-label="${say.marks}"`}>${joined(row.marks, ", ")}</td>
<td class="remarks">${row.remarks}${row.hazards.map(
    ({ id, name }) =>
      html` <a class="to-caution" href="#caution-${id}">${say.caution}<span class="unseen">: ${name}</span></a>`,
  )}${whereSeen(row, site)}</td>
${site.templates["parts/rate-cells"](row.rate, site)}
</tr>
`;
}

/** The photographs that point it out, and when the recording comes to it. */
function whereSeen({ seen, moments }: PartRow, { words, link }: PageSite): Html | null {
  if (seen.length + moments.length === 0) return null;
  const links = [
    ...seen.map(({ address, name }) => html`<a href="${address}">${name}</a>`),
    ...moments.map(
      ({ address, name, seconds }) =>
        html`<a class="moment" href="${link(address)}" data-seconds="${seconds}">${name}</a>`,
    ),
  ];
  return html` <span class="seen-in">${words.pages.photographs.seen} ${joined(links, "; ")}</span>`;
}

/** A share and the interval about it, in two columns that align. */
export function rateCells({ share, interval, count }: RateView, { words }: PageSite): Html {
  const say = words.pages.item;
  if (share === null)
    return html`<td class="number rate" colspan="2" data-label="${say.recorded}">${say.notRecorded}</td>`;
  return html`<td class="number rate" data-label="${say.recorded}">${share}</td><td class="number interval">${interval} <small>${count}</small></td>`;
}
