import { addresses } from "../../shared/pages/addresses/addresses.ts";
import type { PageHead } from "../../shared/pages/page.ts";
import { enquiryLink } from "../../shared/pages/views/enquiry-link.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** The foot of every page: what the collection has to say of itself, and where its data are. The first page has that at its head. */
export function colophon({ address, title }: PageHead, { settings, words, link }: PageSite): Html {
  const say = words.pages.site;
  const enquiries = enquiryLink(settings.enquiries, title);
  return html`<footer class="colophon">
${address !== addresses.home && settings.notice && html`<p class="notice">${settings.notice}</p>`}
<p class="imprint">${settings.publisher && html`<span>${settings.publisher}</span>`} ${settings.rights && html`<span>${settings.rights}</span>`} <span>${say.made}</span>${enquiries && html` <span>${say.enquiries}: <a href="${enquiries.address}">${enquiries.name}</a></span>`}</p>
<p class="data-links"><a href="${link(addresses.collectionData)}">${say.allData}</a> <a href="${link(addresses.itemsCsv)}">${say.table}</a> <a href="${link(addresses.feed)}">${say.feed}</a>${settings.fieldReference && html` <a href="${link(addresses.fields)}">${words.pages.fields.link}</a>`}</p>
</footer>`;
}
