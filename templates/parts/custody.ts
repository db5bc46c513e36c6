import type { CustodyView } from "../../shared/pages/item/item-custody.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Where it has been, as dated events, with the years of which none is recorded. */
export function custody({ events, documented, gaps, caveats, plot }: CustodyView, site: PageSite): Html {
  const { words, templates } = site;
  const say = words.pages.item;
  if (events.length === 0) return html`<p>${say.noCustody}</p>`;
  return html`${templates["parts/drawing"]({ kind: "custody", svg: plot }, site)}
<ol class="custody">${events.map(
    ({ date, event, people, evidence, source, price, note }) =>
      html`<li><span class="when">${date}</span> <span class="what">${words.pages.capital(event)}${people !== "" && `, ${people}`}.${
        note !== null && ` ${note}`
      }${
        (evidence !== null || source !== null || price !== null) &&
        html` <small>${words.pages.capital([evidence && say.evidence(evidence), price].filter((text) => text !== null).join(", "))}${evidence !== null && source !== null && "; "}${source && templates["parts/links"]([source], site)}</small>`
      }</span></li>`,
  )}</ol>
<p class="small">${[documented, ...gaps, ...caveats].join(" ")}</p>`;
}
