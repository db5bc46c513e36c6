import type { FindingList } from "../../shared/pages/item/item-findings.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function findings(lists: readonly FindingList[], site: PageSite): Html {
  if (lists.length === 0) return html`<p class="lead">${site.words.pages.item.allThere}</p>`;
  return html`<dl class="findings">${lists.map(
    ({ id, label, findings: found, note }) =>
      html`<div class="finding-${id}"><dt>${label}</dt><dd><ul>${found.map(
        ({ address, name, detail }) =>
          html`<li>${address === "" ? name : html`<a href="${address}">${name}</a>`}${detail !== null && html` <small>${detail}</small>`}</li>`,
      )}</ul>${note !== null && html`<p class="small">${note}</p>`}</dd></div>`,
  )}</dl>`;
}
