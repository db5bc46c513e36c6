import type { FateView } from "../../shared/pages/item/item-fate.ts";
import type { ItemPage } from "../../shared/pages/item/item-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** A text with a piece that no line may part. */
function unparted(text: string, piece: string | null): Html | string {
  const at = piece === null ? -1 : text.indexOf(piece);
  if (piece === null || at < 0) return text;
  return html`${text.slice(0, at)}<span class="unparted">${piece}</span>${text.slice(at + piece.length)}`;
}

const fate = ({ headline, said, isUrgent }: FateView): Html =>
  isUrgent
    ? html`<div class="foremost"><p class="headline">${headline}</p><ul>${said.map((each) => html`<li>${each}</li>`)}</ul></div>`
    : html`<p class="fate"><strong>${headline}.</strong> ${said.join(" ")}</p>`;

/** In ten seconds: what it is, how complete, how rare, what is missing. What has become of it, and evidence against its label, come first. */
export function itemOpening(page: ItemPage, site: PageSite): Html {
  const { words, link, templates } = site;
  const { item: say } = words.pages;
  const { identity, brief } = page;
  const contradicted = identity.verdict === "contradicted";
  const heldToBe = html`<p class="held">${say.heldToBe} <a href="${link(page.variant.address)}">${page.variant.name}</a></p>`;
  const cell = (id: string, label: string, first: Html | string, second: Html | string | null) =>
    html`<div class="brief-${id}"><dt>${label}</dt><dd><p class="first">${first}</p>${second !== null && html`<p>${second}</p>`}</dd></div>`;
  return html`${templates["parts/opening"](
    {
      page,
      above: html`${page.fate && fate(page.fate)}${
        contradicted &&
        html`<div class="foremost"><p class="headline">${identity.headline}</p><ul>${identity.against.map((each) => html`<li>${each}</li>`)}</ul><p><a href="#identification">${say.identification}</a></p></div>`
      }`,
      below: html`${heldToBe}
<dl class="particulars">${page.particulars.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}${page.enquiries && html`<div class="enquiries"><dt>${words.pages.site.enquiries}</dt><dd><a href="${page.enquiries.address}">${page.enquiries.name}</a></dd></div>`}</dl>`,
    },
    site,
  )}
<section class="in-brief" aria-label="${say.brief}"><dl>
${cell("what", say.what, identity.finding, html`<a href="#identification">${identity.sentence}</a>`)}
${cell("complete", say.howComplete, brief.complete ?? "—", html`<a href="#completeness">${brief.complete === null ? page.completeness.none : brief.level}</a>`)}
${cell("rare", say.howRare, unparted(brief.surviving, brief.survivingRange), html`<a href="#rarity">${[brief.class, brief.rank].filter((text) => text !== null).join("; ")}</a>`)}
${cell(
  "missing",
  say.whatMissing,
  brief.missing.length === 0
    ? brief.noneMissing
    : html`${templates["parts/links"](brief.missing, site)}${brief.more !== null && html`, <a class="unparted" href="#missing">${brief.more}</a>`}`,
  brief.amiss === null ? null : html`<a href="#missing">${brief.amiss}</a>`,
)}
</dl>${identity.reservation !== null && html`<p class="reservation">${identity.reservation}</p>`}</section>
${
  page.hazards.length > 0 &&
  html`<p class="handle"><strong>${say.handle}</strong> ${templates["parts/links"](
    page.hazards.map(({ id, name }) => ({ address: `#caution-${id}`, name })),
    site,
  )}</p>`
}
`;
}
