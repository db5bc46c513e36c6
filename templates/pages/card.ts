import type { DisplayCardPage } from "../../shared/pages/item/display-card-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

/** One sheet of A5 to stand beside the piece: what it is, how complete, three facts, and where the rest is told. */
export function cardTemplate(page: DisplayCardPage, site: PageSite): Html {
  const { words, link, templates, settings, audience } = site;
  const say = words.pages.displayCard;
  return html`<p class="card-way"><a href="${link(page.item.address)}">${page.item.name}</a> <span>${say.paper}</span></p>
<article class="card-sheet">
${audience === "private" && html`<p class="private-notice">${words.pages.site.privateCopy}</p>`}
<p class="card-book">${templates["parts/logo"]({ height: 24 }, site)}${settings.title}</p>
<header><h1>${page.title}</h1>
<p class="held">${words.pages.item.heldToBe} ${page.variant}: <span class="verdict-${page.verdict.id}">${page.verdict.word}</span></p></header>
${templates["parts/drawing"]({ kind: "plan", svg: page.plan }, site)}
${page.complete !== null && html`<div class="card-complete"><p>${page.complete}</p>${markup(page.mark)}</div>`}
${page.assembled !== null && html`<p class="card-assembled"><strong>${words.pages.capital(words.pages.assembled)}.</strong> ${say.assembled(page.assembled)}</p>`}
<dl class="card-facts">${page.facts.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>
${page.hazards.length > 0 && html`<p class="card-cautions"><strong>${words.pages.item.handle}</strong> ${words.pages.list(page.hazards)}. ${say.cautions}</p>`}
<footer><p class="card-address">${page.whereTo}</p>${settings.publisher !== null && html`<p>${settings.publisher}</p>`}${settings.notice !== null && html`<p class="card-notice">${settings.notice}</p>`}</footer>
</article>
`;
}
