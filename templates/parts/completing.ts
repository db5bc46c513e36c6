import type { CompletingView } from "../../shared/pages/item/item-completing.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What would make it whole, and what it could give. */
export function completing({ wants, spares }: CompletingView, site: PageSite): Html {
  const say = site.words.pages.item;
  return html`${
    wants.length > 0 &&
    html`<table class="wants"><thead><tr><th scope="col">${say.part}</th><th scope="col" class="number">${say.wantsUnits}</th><th scope="col" class="number">${say.wantsAdds}</th></tr></thead><tbody>${wants.map(
      ({ part, units, adds }) =>
        html`<tr><th scope="row"><a href="${part.address}">${part.name}</a></th><td class="number">${units}</td><td class="number adds">${adds}</td></tr>`,
    )}</tbody></table>`
  }
${
  spares.length > 0 &&
  html`<p>${say.spares}: ${site.templates["parts/links"](
    spares.map(({ part, units }) => ({ ...part, name: `${part.name} (${units})` })),
    site,
  )}.</p>`
}`;
}
