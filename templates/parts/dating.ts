import type { ItemPage } from "../../shared/pages/item/item-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function dating(
  { issued, serial, serialPlot, parts, caveats }: ItemPage["dating"],
  site: PageSite,
): Html {
  const say = site.words.pages.item;
  return html`<dl class="figures plain">
${issued !== null && html`<div><dt>${say.datingIssued}</dt><dd>${issued}</dd></div>`}
${serial !== null && html`<div><dt>${say.datingSerial}</dt><dd>${serial}</dd></div>`}
${parts.map(
  ({ part, dated }) =>
    html`<div><dt><a href="${part.address}">${part.name}</a></dt><dd>${dated.map(
      ({ units, verdict, doubt }, at) =>
        html`${at > 0 && html`<br>`}${units !== null && `${units}: `}${doubt ? html`<strong>${verdict}</strong>` : verdict}`,
    )}</dd></div>`,
)}
</dl>
${serialPlot !== null && html`${site.templates["parts/drawing"]({ kind: "serial", svg: serialPlot }, site)}<p class="small">${say.serialNote}</p>`}
${parts.length === 0 && html`<p class="small">${say.datingNone}</p>`}
${caveats.map((caveat) => html`<p class="small">${caveat}</p>`)}`;
}
