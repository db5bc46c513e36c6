import type { PageHead } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** From the title page down to the parent of this one. */
export function trail({ trail: links }: PageHead, { words, link }: PageSite): Html {
  if (links.length === 0) return html``;
  return html`<nav class="trail" aria-label="${words.pages.site.trail}"><ol>${links.map(
    ({ address, name }) => html`<li><a href="${link(address)}">${name}</a></li>`,
  )}</ol></nav>`;
}
