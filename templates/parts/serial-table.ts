import type { SerialRow } from "../../shared/pages/variant/variant-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface SerialTable {
  readonly caption: string | null;
  readonly ranges: readonly SerialRow[];
}

export function serialTable({ caption, ranges }: SerialTable, site: PageSite): Html {
  const { words, templates } = site;
  const say = words.pages.variant;
  const links = (source: SerialRow["source"]) => source && templates["parts/links"]([source], site);
  return html`<table class="serials">${caption !== null && html`<caption>${caption}</caption>`}
<thead><tr><th scope="col">${say.range}</th><th scope="col">${say.rangeMade}</th><th scope="col">${say.rangeSource}</th></tr></thead>
<tbody>${ranges.map(
    ({ range, made, source, page, remarks }) =>
      html`<tr><th scope="row">${range}</th><td>${made ?? "—"}</td><td><span>${links(source) ?? "—"}${page !== null && `, ${page}`}</span>${remarks !== "" && html` <small>${remarks}</small>`}</td></tr>`,
  )}</tbody></table>`;
}
