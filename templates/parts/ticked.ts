import { addresses } from "../../shared/pages/addresses/addresses.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What is ticked, at the foot of the window while anything is; the script fills it in. */
export function ticked(_: object, { words, link }: PageSite): Html {
  const say = words.pages.finder;
  return html`<aside class="ticked" aria-label="${say.compare}" hidden><p><output class="told-ticked"></output> <a class="set-beside" href="${link(addresses.comparisons)}">${say.setBeside}</a> <button type="button" class="untick">${say.untick}</button></p></aside>`;
}
