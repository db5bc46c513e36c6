import type { VariantPage } from "../../shared/pages/variant/variant-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

/** What was issued, part by part, and how often each is still found. */
export function issuedTable({ groups }: Pick<VariantPage, "groups">, site: PageSite): Html {
  const say = site.words.pages.variant;
  const caution = site.words.pages.item.caution;
  return withRoles(html`<table class="issued">
<thead><tr><th scope="col">${say.part}</th><th scope="col" class="number">${say.quantity}</th><th scope="col">${say.standing}</th><th scope="col" class="number">${say.weight}</th><th scope="col">${say.marks}</th><th scope="col" class="number" colspan="2">${say.found2}</th></tr></thead>
${groups.map(
  ({ name, parts }) => html`<tbody>
${name && html`<tr class="group"><th scope="rowgroup" colspan="7">${name}</th></tr>`}
${parts.map(
  (part) => html`<tr id="part-${part.id}">
<th scope="row">${part.name}</th>
<td class="number" data-label="${say.quantity}">${part.quantity}</td>
<td data-label="${say.standing}">${part.standing}</td>
<td class="number" data-label="${say.weight}">${part.weight}</td>
<td class="marks" data-label="${say.marks}">${part.marks.join(", ")}</td>
${site.templates["parts/rate-cells"](part.rate, site)}
</tr>
${
  (part.look || part.note || part.hazards.length > 0) &&
  html`<tr class="told"><td colspan="7">${part.hazards.map(
    ({ id, name: hazard }) =>
      html`<a class="to-caution" href="#caution-${id}">${caution}<span class="unseen">: ${hazard}</span></a> `,
  )}${part.look} ${part.note && html`<i>${part.note}</i>`}</td></tr>`
}`,
)}
</tbody>`,
)}
</table>`);
}
