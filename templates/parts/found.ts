import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

/** Where the script shows what was found: empty until it does, with a row to be filled in. */
export function found(_: object, site: PageSite): Html {
  const { catalogue: say, finder } = site.words.pages;
  return html`<section class="found" aria-label="${finder.results}" tabindex="-1" hidden>
${withRoles(html`<table class="entries">
${site.templates["parts/entries-head"]({ pictured: false }, site)}
</table>`)}
<nav class="pager" aria-label="${finder.pages}" hidden></nav>
</section>
<template class="found-row">${withRoles(html`<tr class="entry">
<th scope="row"><a data-field="title" href="./">${say.outfit}</a> <small data-field="serial"></small><span class="of-variant"></span></th>
<td data-field="verdict" data-label="${say.verdict}"></td>
<td class="number complete" data-field="complete" data-label="${say.completeness}"></td>
<td data-field="level" data-label="${say.level}"></td>
<td class="number" data-field="rank" data-label="${say.rank}"></td>
<td data-field="status" data-label="${say.status}"></td>
<td class="tick" data-label="${finder.compare}"><label><input type="checkbox" class="tick-box"><span class="unseen" data-field="tick"></span></label></td>
</tr>`)}</template>`;
}
