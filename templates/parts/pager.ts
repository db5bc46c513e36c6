import type { PagerView } from "../../shared/pages/addresses/pager.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Where a long list goes on. */
export function pager({ previous, next, pages }: PagerView, { words, link }: PageSite): Html {
  const say = words.pages.finder;
  return html`<nav class="pager" aria-label="${say.pages}">
${previous && html`<a rel="prev" href="${link(previous.address)}">${previous.name}</a>`}
<ol>${pages.map((page) =>
    page === null
      ? html`<li aria-hidden="true">…</li>`
      : html`<li><a href="${link(page.address)}"${page.isHere && html` aria-current="page"`}>${page.name}</a></li>`,
  )}</ol>
${next && html`<a rel="next" href="${link(next.address)}">${next.name}</a>`}
</nav>`;
}
