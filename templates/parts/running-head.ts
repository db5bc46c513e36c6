import { addresses } from "../../shared/pages/addresses/addresses.ts";
import type { PageHead } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** The line at the head of every page: the book's title, and its divisions. */
export function runningHead(page: PageHead, site: PageSite): Html {
  const { settings, words, link, audience, hasArticles, templates } = site;
  const say = words.pages.site;
  const divisions = [
    [addresses.items, say.outfits],
    [addresses.families, say.families],
    ...(hasArticles ? ([[addresses.articles, say.articles]] as const) : []),
    [addresses.sightings, say.sightings],
    [addresses.sources, say.sources],
    [addresses.methods, say.methods],
  ] as const;
  const isHere = (address: string) => page.address === address;
  const isWithin = (address: string) =>
    page.address.startsWith(address) ||
    (address === addresses.families && page.address.startsWith("/variants/")) ||
    (address === addresses.items && page.address.startsWith(addresses.comparisons));
  return html`<header class="running-head">
${audience === "private" && html`<p class="private-notice">${say.privateCopy}</p>`}
<div class="running-line">
<p class="book-title"><a href="${link(addresses.home)}"${isHere(addresses.home) && html` aria-current="page"`}>${templates["parts/logo"]({ height: 28 }, site)}${settings.title}</a></p>
<nav aria-label="${say.contents}"><ul class="divisions">${divisions.map(
    ([address, name]) =>
      html`<li><a href="${link(address)}"${isHere(address) ? html` aria-current="page"` : isWithin(address) && html` aria-current="true"`}>${name}</a></li>`,
  )}</ul></nav>
</div>
</header>`;
}
